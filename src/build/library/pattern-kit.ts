import type { Kit } from "../../core/kit/kit.ts";
import { computePattern } from "../../core/pattern/compute.ts";
import { type Pattern, pictureLeaves } from "../../core/pattern/pattern.ts";
import type { PatternedKit } from "../../core/pattern/patterned-kit.ts";
import { levelExtents } from "../../core/picture/level-extents.ts";
import { atPlace } from "../../input/files/at-place.ts";
import { KitError } from "../../input/files/message.ts";
import { fieldName } from "../../input/files/schema-messages.ts";
import { motifNotes } from "../../input/kit/motif-notes.ts";
import type { StatedKit } from "../../input/kit/read-kit.ts";
import { authorFailure } from "../../words/findings/author-failure.ts";
import * as say from "../../words/messages.ts";

/** Computes the pattern of a kit on its own book. @throws KitError with the place of what does not fit, or of a picture that no leaf shows */
export function patternKit({ kit, file, placeOf, pictureNotes }: StatedKit): PatternedKit {
  const result = computePattern(kit);
  if (result.fits) {
    const { pattern, findings } = result;
    if (!pictureLeaves(pattern).some(({ cuts }) => cuts.length > 0)) throw flatPicture(file, placeOf, pictureNotes);
    const ofMotifs = atPlace(file, { placeOf }, () => motifNotes(kit, pattern));
    return { kit, pattern, findings, pictureNotes: [...pictureNotes, ...lostLevels(kit, pattern), ...ofMotifs] };
  }
  const { path, ...words } = authorFailure(result.finding, kit);
  throw new KitError([{ file, ...placeOf(path), field: fieldName(path), ...words }]);
}

/** Levels that the picture shows and no leaf does; what the picture itself hides is told already. */
function lostLevels({ picture }: Kit, { levels, background, leaves }: Pattern): string[] {
  const extents = levelExtents(picture);
  const seen = new Set(leaves.flatMap(({ spans }) => spans.map(({ level }) => level)));
  return levels
    .filter((_, i) => i + 1 !== background && extents[i] !== undefined && !seen.has(i + 1))
    .map(({ name }) => say.frontLevelLost({ level: name }));
}

function flatPicture(file: string, placeOf: StatedKit["placeOf"], notes: readonly string[]): KitError {
  const given = [say.frontPictureFlat(), ...notes].join("; ");
  const advice = { given, allowed: say.frontPictureCuts(), remedy: say.frontPictureShow() };
  return new KitError([{ file, ...placeOf(["picture", "levels"]), field: "picture.levels", ...advice }]);
}
