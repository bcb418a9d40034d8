import { heightOf, openingOf } from "../fit/shape.ts";
import { BOUNDS } from "../kit/bounds.ts";
import type { Kit } from "../kit/kit.ts";
import { type PatternBase, pictureLeaves } from "../pattern/pattern.ts";
import { atHeight } from "../refit/height-offer.ts";
import { toDegrees } from "../units/angle.ts";
import { roundTo, tidy } from "../units/length.ts";
import { rulerStep } from "../units/ruler.ts";
import { type ChangedKit, withFigures, withMergedLevels, withSimplified } from "./change.ts";

/** Heights, as shares of the height; the nearest first. */
const HEIGHTS = [1.1, 1.25, 1.5, 0.9, 0.75];

/** Distances of the deeper levels from the front one, as shares; and whole depths, as shares. */
const NEARER = [0.75, 0.5];
const SHALLOWER = [0.8, 0.6];

/** Picture leaves less, or more, as shares of them. */
const LEAVES = [-0.1, -0.25, 0.1, 0.25];

/** Openings, degrees less or more. */
const DEGREES = [-10, 10, -25, 25];

/** How far an outline may stray when it is made simpler, mm on the book: about the width of a pencil's line. */
export const SIMPLER = 0.8;

/** Everything that may be worth a try, the mildest of each kind first. Nothing is computed yet. */
export function changesOf(kit: Kit, pattern: PatternBase): ChangedKit[] {
  return [
    withSimplified(kit, SIMPLER, pattern.fit.height / kit.picture.height),
    ...heights(kit),
    ...depths(kit),
    ...borders(kit, pattern),
    ...openings(kit),
    ...fewerLevels(kit),
  ];
}

function heights(kit: Kit): ChangedKit[] {
  const stated = heightOf(kit.fit.shape);
  if (stated === undefined) return [];
  const step = rulerStep(kit.units, "coarse");
  const most = Math.floor(kit.book.leafHeight / step) * step;
  const tried = HEIGHTS.map((share) => tidy(Math.min(most, roundTo(stated * share, step))));
  return [...new Set(tried)]
    .filter((height) => Math.abs(height - stated) >= step && height >= BOUNDS.pictureHeight.least)
    .map((height) => withFigures(kit, { kind: "height", height }, atHeight(kit, height)));
}

/** Nearer to the front level, or all shallower, on a step that a ruler shows; with a gauge, on its lines. */
function depths(kit: Kit): ChangedKit[] {
  const front = kit.levels[0]!.depth;
  const step = rulerStep(kit.units, "plain");
  const onRuler = (depth: number): number => Math.max(tidy(step), roundTo(depth, step));
  const byShare = [
    ...NEARER.map((share) =>
      kit.levels.map(({ depth }, k) => (k === 0 ? depth : onRuler(front + (depth - front) * share))),
    ),
    ...SHALLOWER.map((share) => kit.levels.map(({ depth }) => onRuler(depth * share))),
  ];
  return [...nextLines(kit), ...byShare]
    .filter((tried) => tried.every((depth, i) => depth >= BOUNDS.depth.least && (i === 0 || depth > tried[i - 1]!)))
    .map((tried) => withFigures(kit, { kind: "depths", depths: tried }, { depths: tried }));
}

/** On a gauge with lines to spare, each level at the line after the one before it. */
function nextLines(kit: Kit): number[][] {
  const front = kit.levels[0]!.line;
  const lines = kit.levels.map((_, k) => kit.gaugeLines[(front ?? 0) - 1 + k]);
  const spare = front !== undefined && kit.levels.every(({ line }) => line !== undefined);
  const moves = kit.levels.some(({ depth }, k) => lines[k] !== undefined && lines[k]! < depth);
  return spare && moves && lines.every((line) => line !== undefined) ? [lines] : [];
}

/** Fewer picture leaves need a wider opening for the same picture, more leaves show finer parts. */
function borders(kit: Kit, pattern: PatternBase): ChangedKit[] {
  if (kit.fit.shape.solve === "pictureLeaves" || kit.fit.shape.pictureLeaves !== "fill") return [];
  const [before, after] = kit.fit.borderLeaves;
  const leaves = pictureLeaves(pattern).length;
  const tried = LEAVES.map((share) => {
    const less = Math.round((-share * leaves) / 2);
    return [Math.max(0, before + less), Math.max(0, after + less)] as const;
  });
  return tried
    .filter(([first, last]) => first !== before || last !== after)
    .map((borderLeaves) => {
      const change = { kind: "borders", before: borderLeaves[0], after: borderLeaves[1] } as const;
      return withFigures(kit, change, { borderLeaves });
    });
}

function openings(kit: Kit): ChangedKit[] {
  const stated = openingOf(kit.fit.shape);
  if (stated === undefined) return [];
  return DEGREES.map((more) => Math.round(toDegrees(stated) + more))
    .filter((degrees) => degrees >= BOUNDS.opening.least && degrees <= BOUNDS.opening.most)
    .map((degrees) => withFigures(kit, { kind: "opening", degrees }, { openingDegrees: degrees }));
}

/** A picture of fewer levels than this has none to spare. */
const LEVELS_TO_SPARE = 4;

/** Each level folded with its neighbour, but those of light and window. */
function fewerLevels(kit: Kit): ChangedKit[] {
  if (kit.levels.length < LEVELS_TO_SPARE) return [];
  const needed = [kit.light?.level, kit.insert?.outline];
  const numbers = kit.levels.map((_, k) => k + 1);
  return numbers
    .filter((level) => !needed.includes(level))
    .flatMap((level) =>
      [level - 1, level + 1]
        .filter((into) => into >= 1 && into <= kit.levels.length)
        .map((into) => withMergedLevels(kit, level, into)),
    );
}
