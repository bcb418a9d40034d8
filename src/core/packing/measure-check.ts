import { signedArea } from "../geometry/area.ts";
import { type Box, boxAt, boxOf, type Size } from "../geometry/box.ts";
import { levelCrossings, stretchesOf } from "../geometry/crossings.ts";
import type { Ring } from "../geometry/point.ts";
import { meetsBox, sidesOf } from "../geometry/side-in-box.ts";
import { drawnLine, REFERENCE, referencePath, type ToolPath } from "./operation.ts";
import { APART } from "./pack.ts";

/** How wide the bars are that stand in the free edge of a full sheet, mm; they are as long as the reference rectangle. */
const BAR = 4;

const LYING: Size = REFERENCE;
const UPRIGHT: Size = { width: REFERENCE.height, height: REFERENCE.width };

/**
 * What is measured on a sheet before it is cut: the reference rectangle below the parts, else beside or between them, else
 * in a piece that falls out of one; on a sheet without such room a lying and an upright bar in the free edge.
 */
export function measureChecks(
  sheet: Size,
  edge: number,
  parts: readonly Box[],
  paths: readonly ToolPath[],
): readonly ToolPath[] {
  const spot = below(sheet, edge, parts) ?? between(sheet, edge, parts) ?? inWaste(paths);
  if (spot) return [referencePath(spot.left, spot.top, sizeOf(spot))];
  const inset = (edge - BAR) / 2;
  const [width, height] = [sheet.width, sheet.height].map((side) => barLength(side - 2 * edge));
  return [
    referencePath(edge, sheet.height - inset - BAR, { width: width!, height: BAR }),
    referencePath(sheet.width - inset - BAR, edge, { width: BAR, height: height! }),
  ];
}

/** As long as the reference rectangle, or as many whole centimetres as there are on a small sheet. */
function barLength(room: number): number {
  return Math.min(REFERENCE.width, Math.floor(room / 10) * 10);
}

/** Below all parts; half of the free edge may be taken. */
function below(sheet: Size, edge: number, parts: readonly Box[]): Box | undefined {
  const spot = boxAt(edge, Math.max(...parts.map(({ bottom }) => bottom)) + APART, LYING);
  return isOnSheet(spot, sheet, edge) ? spot : undefined;
}

function isOnSheet({ right, bottom }: Box, sheet: Size, edge: number): boolean {
  return right <= sheet.width - edge / 2 && bottom <= sheet.height - edge / 2;
}

/** Whatever lies free of all parts can be pushed up and to the left until it meets them: only such corners are tried. */
function between(sheet: Size, edge: number, parts: readonly Box[]): Box | undefined {
  const lefts = [edge, ...parts.map(({ right }) => right + APART)];
  const tops = [edge, ...parts.map(({ bottom }) => bottom + APART)];
  const isFree = ({ left, top, right, bottom }: Box): boolean =>
    parts.every(
      (part) =>
        part.left - right >= APART ||
        left - part.right >= APART - TOUCHING ||
        part.top - bottom >= APART ||
        top - part.bottom >= APART - TOUCHING,
    );
  for (const size of [LYING, UPRIGHT])
    for (const top of tops)
      for (const left of lefts) {
        const spot = boxAt(left, top, size);
        if (isOnSheet(spot, sheet, edge) && isFree(spot)) return spot;
      }
  return undefined;
}

/** In the middle of a piece that falls out of a part, a hole, with no line near and no other part there. */
function inWaste(paths: readonly ToolPath[]): Box | undefined {
  const sides = paths.flatMap((path) => sidesOf(drawnLine(path)));
  const cuts = paths.filter(({ operation }) => operation === "through-cut").map(({ points }) => points);
  for (const { ring, box } of holesOf(paths)) {
    const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
    if (!isInside([ring], x, y) || isInside(cuts, x, y)) continue;
    for (const size of [LYING, UPRIGHT]) {
      const spot = boxAt(x - size.width / 2, y - size.height / 2, size);
      const room = grown(spot, APART);
      if (!sides.some((side) => meetsBox(side, room))) return spot;
    }
  }
  return undefined;
}

function isInside(rings: readonly Ring[], x: number, y: number): boolean {
  return stretchesOf(levelCrossings(rings, y)).some(({ from, to }) => from < x && x < to);
}

/** Holes run against the outline round them. */
function holesOf(paths: readonly ToolPath[]): Outline[] {
  const cuts = paths
    .filter(({ operation }) => operation === "through-cut")
    .map(({ points: ring }) => ({ ring, box: boxOf([ring]), sense: Math.sign(signedArea(ring)) }));
  return cuts.filter((inner) => cuts.some((outer) => outer.sense === -inner.sense && isWithin(inner.box, outer.box)));
}

interface Outline {
  readonly ring: Ring;
  readonly box: Box;
}

/** Rounding of sums, mm. */
const TOUCHING = 1e-9;

function sizeOf({ left, top, right, bottom }: Box): Size {
  return { width: right - left, height: bottom - top };
}

function grown({ left, top, right, bottom }: Box, by: number): Box {
  return { left: left - by, top: top - by, right: right + by, bottom: bottom + by };
}

function isWithin(inner: Box, outer: Box): boolean {
  return (
    inner.left >= outer.left && inner.right <= outer.right && inner.top >= outer.top && inner.bottom <= outer.bottom
  );
}
