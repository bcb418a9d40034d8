import * as say from "../../words/messages.ts";
import { printable, shortened } from "../../words/printable.ts";
import { type KitMessage, placeText } from "./message.ts";

/** The most letters of a message's parts: what was given may be a whole file, what is allowed is a list of ours. */
const MOST = { place: 300, field: 120, given: 400, allowed: 900, remedy: 400 } as const;

/** The most messages that are told at once. */
const MESSAGES = 60;

/** A message on one line: `content/kits/moon/index.md:14:3  book.leaves: given 0; allowed: …; do: …` */
export function formatMessage(message: KitMessage): string {
  return say.checkMessage(partsOf(message));
}

/** Several messages, each on its line; of very many the first ones, and how many more there are. */
export function formatMessages(messages: readonly KitMessage[]): string {
  const lines = messages.slice(0, MESSAGES).map(formatMessage);
  const more = messages.length - lines.length;
  return [...lines, ...(more > 0 ? [say.checkMore({ count: more })] : [])].join("\n");
}

/** The texts of a message as a terminal can show them. */
export function partsOf(message: KitMessage): Readonly<Record<keyof typeof MOST, string>> {
  const { field, given, allowed, remedy } = message;
  const texts = { place: placeText(message), field, given, allowed, remedy };
  const shown = Object.entries(texts).map(([name, text]) => [
    name,
    shortened(printable(text), MOST[name as keyof typeof MOST]),
  ]);
  return Object.fromEntries(shown);
}
