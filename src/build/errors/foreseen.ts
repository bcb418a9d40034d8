import { formatMessage } from "../../input/files/format-message.ts";
import { KitError } from "../../input/files/message.ts";
import { formatWordsMessage, WordsError } from "../../input/words/words-error.ts";
import { BuildError } from "./build-error.ts";

/** What to tell of an error that an author can do something about; undefined where the program itself is at fault. */
export function foreseen(error: unknown): string | undefined {
  if (error instanceof WordsError) return error.messages.map(formatWordsMessage).join("\n");
  if (error instanceof KitError) return error.messages.map(formatMessage).join("\n");
  return error instanceof BuildError ? error.message : undefined;
}
