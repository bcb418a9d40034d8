import { computePattern } from "../../core/pattern/compute.ts";
import type { PatternedKit } from "../../core/pattern/patterned-kit.ts";
import { KitError } from "../../input/files/message.ts";
import { fieldName } from "../../input/files/schema-messages.ts";
import type { StatedKit } from "../../input/kit/read-kit.ts";
import { authorFailure } from "../../words/findings/author-failure.ts";

/** Computes the pattern of a kit on its own book. @throws KitError with the place of what does not fit */
export function patternKit({ kit, file, placeOf, pictureNotes }: StatedKit): PatternedKit {
  const result = computePattern(kit);
  if (result.fits) return { kit, pattern: result.pattern, findings: result.findings, pictureNotes };
  const { path, ...words } = authorFailure(result.finding, kit);
  throw new KitError([{ file, ...placeOf(path), field: fieldName(path), ...words }]);
}
