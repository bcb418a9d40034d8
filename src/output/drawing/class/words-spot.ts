import type { Box, Size } from "../../../core/geometry/box.ts";
import type { LineField } from "../../../core/geometry/line-field.ts";

/** Where words stand: their middle, and whether they run upward. */
export interface WordsSpot {
  readonly x: number;
  readonly y: number;
  readonly upright: boolean;
}

/** Steps from the middle of a place toward its sides. */
const STEPS = 12;

/** The spot in a place where words of a width and a height meet no line, the nearest to its middle, and there rather level. Undefined where there is none; `isAllowed` may turn spots down. */
export function wordsSpot(
  place: Box,
  lines: LineField,
  words: Size,
  isAllowed: (spot: WordsSpot) => boolean = () => true,
): WordsSpot | undefined {
  const middle = [(place.left + place.right) / 2, (place.top + place.bottom) / 2] as const;
  return [false, true]
    .flatMap((upright) => spotsIn(place, upright ? turned(words) : words, upright))
    .map((spot) => ({ spot, away: Math.hypot(spot.x - middle[0], spot.y - middle[1]) }))
    .sort((a, b) => a.away - b.away)
    .find(({ spot }) => isAllowed(spot) && !lines.meets(boxAt(spot, spot.upright ? turned(words) : words)))?.spot;
}

/** Spots of a grid at which words of a size lie in the place. */
function spotsIn({ left, top, right, bottom }: Box, { width, height }: Size, upright: boolean): WordsSpot[] {
  const [spareX, spareY] = [right - left - width, bottom - top - height];
  if (spareX < 0 || spareY < 0) return [];
  const shares = Array.from({ length: 2 * STEPS + 1 }, (_, i) => i / (2 * STEPS));
  return shares.flatMap((across) =>
    shares.map((down) => ({
      x: left + width / 2 + across * spareX,
      y: top + height / 2 + down * spareY,
      upright,
    })),
  );
}

function boxAt({ x, y }: WordsSpot, { width, height }: Size): Box {
  return { left: x - width / 2, top: y - height / 2, right: x + width / 2, bottom: y + height / 2 };
}

function turned({ width, height }: Size): Size {
  return { width: height, height: width };
}
