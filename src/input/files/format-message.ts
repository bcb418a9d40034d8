import * as say from "../../words/messages.ts";
import { type KitMessage, placeText } from "./message.ts";

/** A message on one line: `content/kits/moon/index.md:14:3  book.leaves: given 0; allowed: …; do: …` */
export function formatMessage(message: KitMessage): string {
  const { field, given, allowed, remedy } = message;
  return say.checkMessage({ place: placeText(message), field, given, allowed, remedy });
}
