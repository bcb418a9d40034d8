import { Problem } from "../../core/problem.ts";
import type { FrontMatterFile } from "./front-matter.ts";
import { KitError } from "./message.ts";
import { fieldName } from "./schema-messages.ts";

/** Makes something from a front matter; a Problem on the way becomes a message with its place in the file. @throws KitError */
export function atPlace<T>(file: string, front: FrontMatterFile, make: () => T): T {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const { path, given, allowed, remedy } = error;
    throw new KitError([{ file, ...front.placeOf(path), field: fieldName(path), given, allowed, remedy }]);
  }
}
