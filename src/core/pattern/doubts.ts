import { caliper, PLAUSIBLE_CALIPER } from "../book/book.ts";
import { leavesNeeded } from "../book/numbering.ts";
import { stationAt } from "../fan/front.ts";
import type { Doubt } from "../findings/doubt.ts";
import { boxOf } from "../geometry/box.ts";
import { backgroundLevel, type Kit } from "../kit/kit.ts";
import { levelExtents } from "../picture/level-extents.ts";
import type { Face } from "./face.ts";
import { type Pattern, type PatternBase, pictureLeaves } from "./pattern.ts";

/** What can be made but may disappoint, the graver things first. */
export function doubtsOf(kit: Kit, pattern: Pattern, face: Face): Doubt[] {
  const found = [
    ...bookDoubts(kit),
    ...shapeDoubts(pattern),
    floorDoubt(pattern),
    holeDoubt(pattern),
    ...reachDoubts(kit, face),
    mergedDoubt(kit, pattern),
    centreDoubt(kit, pattern),
  ];
  return found.filter((doubt) => doubt !== undefined);
}

/** Whether a book was measured and counted right. */
export function bookDoubts(kit: Kit): (Doubt | undefined)[] {
  return [caliperDoubt(kit), unnumberedDoubt(kit)];
}

/** Whether the book closes as far as the picture wants, and shows it finely and in its shape. */
export function shapeDoubts(pattern: PatternBase): (Doubt | undefined)[] {
  return [springDoubt(pattern), coarseDoubt(pattern), shapeDoubt(pattern)];
}

/** A caliper that cannot be right: pages and leaves may have been mixed up. */
function caliperDoubt({ book }: Kit): Doubt | undefined {
  const one = caliper(book);
  const [least, most] = PLAUSIBLE_CALIPER;
  if (one >= least && one <= most) return undefined;
  return { kind: "caliper", caliper: one, least, most, leaves: book.leaves };
}

/** Share of the leaves that may stay unnumbered after the last page before it looks like a miscount. */
const UNNUMBERED = 0.1;

/** Many leaves after the last page: pages may have been counted as leaves. */
function unnumberedDoubt({ book }: Kit): Doubt | undefined {
  const { lastPage, leaves } = book;
  const unnumbered = leaves - leavesNeeded(book);
  return unnumbered <= UNNUMBERED * leaves ? undefined : { kind: "unnumbered-leaves", lastPage, unnumbered, leaves };
}

function springDoubt({ fit }: PatternBase): Doubt | undefined {
  const { opening, restingOpening } = fit;
  return opening >= restingOpening ? undefined : { kind: "springs-open", opening, resting: restingOpening };
}

/** Front tips farther apart than this show a picture in steps, mm (common practice, no source). */
const COARSE = 3;

/** A leaf is one column of the picture. */
function coarseDoubt(pattern: PatternBase): Doubt | undefined {
  const leaves = pictureLeaves(pattern).length;
  const column = pattern.fit.width / Math.max(1, leaves - 1);
  return column <= COARSE ? undefined : { kind: "coarse", leaves, column };
}

/** Share by which a picture may come out wider or narrower than drawn before it is told. */
const STRETCHED = 0.01;

function shapeDoubt({ fit }: PatternBase): Doubt | undefined {
  const { stretch } = fit;
  return Math.abs(stretch - 1) < STRETCHED ? undefined : { kind: "out-of-shape", stretch };
}

/** A floor that the kit gives may stand where the region is narrower than the light; less than this does not matter, mm. */
const NARROWER = 0.25;

function floorDoubt({ pocket }: Pattern): Doubt | undefined {
  if (!pocket) return undefined;
  const { light, leastWidth: width } = pocket;
  const need = light.diameter + 2 * light.clearance;
  return width >= need - NARROWER ? undefined : { kind: "narrow-floor", level: light.level, width, need };
}

/** The light goes in and out through the hole of the window with this much room, mm. */
const PASSING = 1;

function holeDoubt({ pocket, window }: Pattern): Doubt | undefined {
  if (!pocket || !window) return undefined;
  const box = boxOf(window.guide.outlines);
  const { diameter } = pocket.light;
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  if (Math.min(width, height) >= diameter + PASSING) return undefined;
  return { kind: "light-wider-than-hole", diameter, width, height };
}

/** Deeper tips stand nearer the middle, so the outermost leaves cannot show a deep level that reaches the picture's edge. */
export function reachDoubts(kit: Kit, face: Face): Doubt[] {
  if (kit.fit.view === "along") return [];
  const frontDepth = kit.levels[0]!.depth;
  const background = backgroundLevel(kit.levels);
  const last = face.range.first + face.range.count - 1;
  return kit.levels.flatMap((level, k): Doubt[] => {
    if (k + 1 === background || k === 0) return [];
    const extent = extentOf(kit, face, k + 1);
    if (!extent) return [];
    const start = stationAt(face.fan, face.range, face.front, frontDepth, face.range.first, level.depth);
    const end = stationAt(face.fan, face.range, face.front, frontDepth, last, level.depth);
    const missing = Math.max(start - extent[0], extent[1] - end, 0);
    return missing <= kit.fit.markStep ? [] : [{ kind: "level-out-of-reach", level: k + 1, missing }];
  });
}

/** From where to where (mm, in book order) the picture has a level. */
function extentOf(kit: Kit, face: Face, level: number): [number, number] | undefined {
  const extent = levelExtents(kit.picture)[level - 1];
  if (!extent) return undefined;
  const [least, most] = kit.book.direction === "ltr" ? extent : [1 - extent[1], 1 - extent[0]];
  return [least * face.front.width, most * face.front.width];
}

export function mergedDoubt({ fit }: Kit, { merged }: PatternBase): Doubt | undefined {
  if (merged.length === 0) return undefined;
  // They are told leaf by leaf.
  const leaves = merged.filter(({ leaf }, i) => leaf !== merged[i - 1]?.leaf).length;
  return { kind: "merged-spans", spans: merged.length, leaves, leastTab: fit.leastTab };
}

export function centreDoubt({ book, fit }: Kit, pattern: PatternBase): Doubt | undefined {
  const [before, after] = fit.borderLeaves;
  const unfolded = book.leaves - (pattern.fit.lastLeaf + after);
  if (unfolded === 0) return undefined;
  const share = Math.floor(unfolded / 2);
  return { kind: "off-centre", unfolded, before: before + share, after: after + unfolded - share };
}
