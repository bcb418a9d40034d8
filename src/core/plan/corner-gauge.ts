import { isTurned } from "../corner/crease.ts";
import type { Ring } from "../geometry/point.ts";
import { type CornerPattern, creasesIn } from "../pattern/corner-pattern.ts";

/** The straight side that lies along the fore-edge, and the least slanted side, mm: what a hand holds still (common practice, no source). */
const STRAIGHT = 60;
const LEAST = 40;

/** Gauge and folding card are each printed on one sheet, so they are at most this high, mm. */
const MOST_HEIGHT = 195;

/** Wide enough for the longest crease of 45°, as far as a sheet has room, mm: a longer crease goes on in the same line. */
export function cornerGaugeWidth(pattern: Pick<CornerPattern, "leaves">): number {
  const longest = Math.max(
    0,
    ...creasesIn(pattern)
      .filter((crease) => !isTurned(crease))
      .map(({ to }) => to.depth),
  );
  return Math.round(Math.min(Math.max(LEAST, longest), MOST_HEIGHT - STRAIGHT));
}

/** The gauge's outline, mm, x right and y down, so wide: its point first, then along the straight side. */
export function cornerGaugeRing(wide: number): Ring {
  return [
    [wide, wide],
    [wide, wide + STRAIGHT],
    [0, wide + STRAIGHT],
    [0, 0],
  ];
}

/** The card that leaves are folded over that show nothing, mm; undefined where those are folded to the middle. */
export function foldingCardSize({
  book,
  corner: { emptyDepth },
}: Pick<CornerPattern, "book" | "corner">): { readonly width: number; readonly height: number } | undefined {
  return emptyDepth === undefined ? undefined : { width: emptyDepth, height: Math.min(book.leafHeight, MOST_HEIGHT) };
}
