import { formatMessages } from "../../input/files/format-message.ts";
import * as say from "../../words/messages.ts";
import type { Library } from "../library/library.ts";

/** Tells what a library is without, as it cannot be built. */
export function tellLeftOut({ messages, photoMessages }: Pick<Library, "messages" | "photoMessages">): void {
  const all = [...messages, ...photoMessages];
  if (all.length > 0) console.error([say.checkLeftOut(), formatMessages(all)].join("\n"));
}
