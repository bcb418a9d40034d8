import type { Kit } from "../kit/kit.ts";
import { lazily, once } from "../lazily.ts";
import { reachDoubts } from "../pattern/doubts.ts";
import type { Face } from "../pattern/face.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { type FullLeaves, fullLeaves } from "./full-leaves.ts";
import { keptLevels, type SeenPicture } from "./kept-levels.ts";
import { type LevelReach, levelReaches } from "./level-reach.ts";
import { type NarrowDetail, narrowDetails } from "./narrow-details.ts";
import { columnsOnFront, levelAreas } from "./picture-columns.ts";
import { type PicturePlace, placePicture } from "./picture-place.ts";
import { type Sliver, sliversOf } from "./slivers.ts";

/** All figures that tell how well a picture can be made on a book. Lengths mm, areas mm², angles radians. */
export interface Assessment {
  readonly place: PicturePlace;
  /** Area of each level as the picture lies on the front. */
  readonly areas: readonly number[];
  /** Undefined for a piece that is read while walking round. */
  readonly seen: SeenPicture | undefined;
  readonly slivers: readonly Sliver[];
  readonly narrow: readonly NarrowDetail[];
  readonly full: readonly FullLeaves[];
  readonly reach: readonly LevelReach[];
  /** Mean width of a leaf's column. */
  readonly pitch: number;
  readonly opening: number;
  readonly resting: number;
}

/** A kit's leaves on its book. */
export interface OnBook {
  readonly face: Face;
  readonly pattern: Pattern;
}

/** Looks at a kit on its book, at each figure when it is first asked for; only those of folded leaves ask for the pattern. */
export function assess(kit: Kit, onBook: OnBook): Assessment {
  const { face } = onBook;
  const place = placePicture(kit, face);
  const columns = once(() => columnsOnFront(kit, face));
  const assessment: Assessment = lazily<Assessment>({
    place: () => place,
    areas: () => levelAreas(kit, columns()),
    seen: () => keptLevels(kit, { pattern: onBook.pattern, face, columns: columns() }),
    slivers: () => sliversOf(onBook.pattern, place, () => assessment.areas),
    narrow: () => narrowDetails(kit, face, place),
    full: () => fullLeaves(onBook.pattern, place),
    reach: () => levelReaches(kit, reachDoubts(kit, face)),
    pitch: () => face.solution.width / face.range.count,
    opening: () => face.solution.opening,
    resting: () => onBook.pattern.fit.restingOpening,
  });
  return assessment;
}
