import * as say from "../../words/messages.ts";
import { KitError } from "../files/message.ts";

/** Something that keeps a table from being read at all, at its line; undefined where the whole file is meant. */
export function tableError(file: string, line: number | undefined, given: string, allowed: string): KitError {
  const field = say.checkFieldBooks();
  return new KitError([{ file, line, column: undefined, field, given, allowed, remedy: say.frontCorrectTable() }]);
}
