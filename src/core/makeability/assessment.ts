import type { Doubt } from "../findings/doubt.ts";
import type { Kit } from "../kit/kit.ts";
import { lazily, once } from "../lazily.ts";
import { type Face, faceOf, layOutPicture } from "../pattern/face.ts";
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

/** Looks at a kit with its pattern and what may disappoint in it, at each figure when it is first asked for. */
export function assess(kit: Kit, pattern: Pattern, doubts: readonly Doubt[]): Assessment {
  const face = faceFor(kit);
  const place = placePicture(kit, face);
  const columns = once(() => columnsOnFront(kit, face));
  const assessment: Assessment = lazily<Assessment>({
    place: () => place,
    areas: () => levelAreas(kit, columns()),
    seen: () => keptLevels(kit, { pattern, face, columns: columns() }),
    slivers: () => sliversOf(pattern, place, assessment.areas),
    narrow: () => narrowDetails(kit, face, place),
    full: () => fullLeaves(pattern, place),
    reach: () => levelReaches(kit, doubts),
    pitch: () => face.solution.width / face.range.count,
    opening: () => pattern.fit.opening,
    resting: () => pattern.fit.restingOpening,
  });
  return assessment;
}

/** The face of a kit that has a pattern. */
function faceFor(kit: Kit): Face {
  const layout = layOutPicture(kit);
  if ("failure" in layout) throw new Error(`${kit.slug} has a pattern, but no layout: ${layout.failure.kind}`);
  return faceOf(kit, layout.value);
}
