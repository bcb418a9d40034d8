import { KitError } from "../input/files/message.ts";
import { PrintError } from "./print/print-error.ts";
import { MisfitError } from "./report.ts";

/** What to tell of an error that an author can do something about; undefined where the program itself is at fault. */
export function foreseen(error: unknown): string | undefined {
  const known = error instanceof KitError || error instanceof PrintError || error instanceof MisfitError;
  return known ? error.message : undefined;
}
