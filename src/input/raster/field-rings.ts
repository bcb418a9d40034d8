import { contours } from "d3-contour";
import type { Point, Ring } from "../../core/geometry/point.ts";
import type { Field } from "./runs.ts";

/**
 * The outlines of a field where it is 0, by marching squares between the middles of pixels; corners of pixels are at whole
 * numbers. What reaches an edge of the picture reaches it wholly. Holes run against the sense of what they are in.
 */
export function fieldRings(field: Field): Ring[] {
  const { width, height } = field;
  const wide = widened(field);
  const { coordinates } = contours()
    .size([width + 2, height + 2])
    .contour(wide as unknown as number[], 0);
  const inside = (value: number, side: number): number => Math.min(side, Math.max(0, value - 1));
  return coordinates
    .flat()
    .map((ring) => ring.slice(0, -1).map(([x, y]): Point => [inside(x!, width), inside(y!, height)]))
    .map(withoutTwins)
    .filter((ring) => ring.length >= 3);
}

/** With a row of pixels more at each edge, the same as those beside it: so outlines cross an edge straight. */
function widened({ width, height, values }: Field): Float32Array {
  const wide = new Float32Array((width + 2) * (height + 2));
  for (let y = 0; y < height + 2; y += 1) {
    const row = Math.min(height - 1, Math.max(0, y - 1)) * width;
    const at = y * (width + 2);
    wide.set(values.subarray(row, row + width), at + 1);
    wide[at] = values[row]!;
    wide[at + width + 1] = values[row + width - 1]!;
  }
  return wide;
}

function withoutTwins(ring: readonly Point[]): Ring {
  return ring.filter(([x, y], i) => {
    const [beforeX, beforeY] = ring[i === 0 ? ring.length - 1 : i - 1]!;
    return x !== beforeX || y !== beforeY;
  });
}
