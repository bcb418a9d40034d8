import { computePattern } from "../core/pattern/compute.ts";
import type { PatternedKit } from "../core/pattern/patterned-kit.ts";
import { Problem } from "../core/problem.ts";
import { KitError } from "../input/files/message.ts";
import { fieldName } from "../input/files/schema-messages.ts";
import type { StatedKit } from "../input/kit/read-kit.ts";

/** Computes the pattern of a kit on its own book. @throws KitError with the place of what does not fit */
export function patternKit({ kit, file, placeOf, pictureNotes }: StatedKit): PatternedKit {
  try {
    return { kit, pattern: computePattern(kit), pictureNotes };
  } catch (error) {
    if (!(error instanceof Problem)) throw error;
    const { path, given, allowed, remedy } = error;
    throw new KitError([{ file, ...placeOf(path), field: fieldName(path), given, allowed, remedy }]);
  }
}
