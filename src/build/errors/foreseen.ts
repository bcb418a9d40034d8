import { formatMessages } from "../../input/files/format-message.ts";
import { KitError } from "../../input/files/message.ts";
import { formatWordsMessage, WordsError } from "../../input/words/words-error.ts";
import { printable, shortened } from "../../words/printable.ts";
import { BuildError } from "./build-error.ts";

/** The most letters of what a command tells of the machine. */
const MOST = 4000;

/** What to tell of an error that somebody can do something about; undefined where the program itself is at fault. */
export function foreseen(error: unknown): string | undefined {
  if (error instanceof WordsError) return error.messages.map(formatWordsMessage).join("\n");
  if (error instanceof KitError) return formatMessages(error.messages);
  return error instanceof BuildError ? shortened(printable(error.message, true), MOST) : undefined;
}
