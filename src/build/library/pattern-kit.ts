import type { Failure } from "../../core/findings/failure.ts";
import { asCutKit, isCutKit } from "../../core/kit/cut-kit.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { computeCorner } from "../../core/pattern/compute-corner.ts";
import { fitKit } from "../../core/pattern/fit-kit.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import type { AnyPatternedKit, PatternedKit } from "../../core/pattern/patterned-kit.ts";
import { levelExtents } from "../../core/picture/level-extents.ts";
import { atPlace } from "../../input/files/at-place.ts";
import { KitError } from "../../input/files/message.ts";
import { fieldName } from "../../input/files/schema-messages.ts";
import { motifNotes } from "../../input/kit/motif-notes.ts";
import type { StatedKit } from "../../input/kit/read-kit.ts";
import { authorFailure } from "../../words/findings/author-failure.ts";
import * as say from "../../words/messages.ts";

/** Computes the pattern of a kit on its own book, whichever way its leaves are made. @throws KitError with the place of what does not fit, or of a picture that no leaf shows */
export function patternAnyKit(stated: StatedKit): AnyPatternedKit {
  const { kit, pictureNotes } = stated;
  if (isCutKit(kit)) return patternKit(stated);
  const result = computeCorner(kit);
  if (!result.fits) throw misfit(stated, result.finding);
  const { pattern, findings } = result;
  return { kit, pattern, findings, pictureNotes };
}

/** The same of a kit that is cut. */
export function patternKit(stated: StatedKit): PatternedKit {
  const { kit, file, placeOf, pictureNotes } = stated;
  const result = fitKit(asCutKit(kit));
  if (result.fits) {
    const { pattern, findings } = result;
    const ofMotifs = atPlace(file, { placeOf }, () => motifNotes(kit, pattern));
    return { kit, pattern, findings, pictureNotes: [...pictureNotes, ...lostLevels(kit, pattern), ...ofMotifs] };
  }
  throw misfit(stated, result.finding);
}

function misfit({ kit, file, placeOf, pictureNotes }: StatedKit, finding: Failure): KitError {
  const { path, given, ...words } = authorFailure(finding, kit);
  // What was not drawn may be why the picture is flat.
  const isFlat = finding.kind === "picture-flat" || finding.kind === "nothing-to-show";
  const all = isFlat ? [given, ...pictureNotes].join("; ") : given;
  return new KitError([{ file, ...placeOf(path), field: fieldName(path), given: all, ...words }]);
}

/** Levels that the picture shows and no leaf does; what the picture itself hides is told already. */
function lostLevels({ picture }: Kit, { levels, background, leaves }: Pattern): string[] {
  const extents = levelExtents(picture);
  const seen = new Set(leaves.flatMap(({ spans }) => spans.map(({ level }) => level)));
  return levels
    .filter((_, i) => i + 1 !== background && extents[i] !== undefined && !seen.has(i + 1))
    .map(({ name }) => say.frontLevelLost({ level: name }));
}
