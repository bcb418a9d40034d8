import { formatMessages } from "../../input/files/format-message.ts";
import { KitError } from "../../input/files/message.ts";
import { formatWordsMessage, WordsError } from "../../input/words/words-error.ts";
import { printable, shortened } from "../../words/printable.ts";
import { BuildError } from "./build-error.ts";
import { diskFault } from "./disk-fault.ts";

/** The most letters of what a command tells of the machine. */
const MOST = 4000;

/** What to tell of an error that somebody can do something about; undefined where the program itself is at fault. */
export function foreseen(error: unknown): string | undefined {
  if (error instanceof WordsError) return error.messages.map(formatWordsMessage).join("\n");
  if (error instanceof KitError) return formatMessages(error.messages);
  const told = error instanceof BuildError ? error : ofDisk(error);
  return told && shortened(printable(told.message, true), MOST);
}

/** What the system refused, also where nobody waited for it. */
function ofDisk(error: unknown): BuildError | undefined {
  try {
    return diskFault(error, process.cwd());
  } catch {
    // There may be no words yet to say it with.
    return undefined;
  }
}
