import type { Point, Ring } from "./point.ts";

/**
 * A closed outline moved by `distance` to the side that its normals point to, corners round, with no more than `tolerance`
 * between an arc and its chords; coordinates are whole numbers. It crosses itself where more is taken away than there is, and
 * where it meets itself: what is wound round the right way is what is looked for.
 */
export function rawOffset(outline: Ring, distance: number, tolerance: number): Ring {
  const ring = outline.filter((at, i) => {
    const before = outline.at(i - 1)!;
    return at[0] !== before[0] || at[1] !== before[1];
  });
  const sides = ring.map((at, i) => {
    const next = ring[i + 1] ?? ring[0]!;
    const x = next[0] - at[0];
    const y = next[1] - at[1];
    const length = Math.hypot(x, y);
    return { x: y / length, y: -x / length, length };
  });
  const turns = sides.map((side, i) => {
    const last = sides.at(i - 1)!;
    const sin = side.y * last.x - last.y * side.x;
    const cos = side.x * last.x + side.y * last.y;
    const inward = cos > -0.999 && sin * distance < 0;
    // What an inward corner takes away of each of its sides.
    return { sin, cos, inward, taken: inward ? Math.abs((distance * sin) / (1 + cos)) : 0 };
  });
  const isLeft = sides.map(({ length }, i) => turns[i]!.taken + (turns[i + 1] ?? turns[0]!).taken < length);
  const step = (distance < 0 ? -2 : 2) * Math.acos(1 - tolerance / Math.abs(distance));
  const moved: Point[] = [];
  for (let i = 0; i < ring.length; i += 1) {
    const at = ring[i]!;
    const put = (along: number, across: number): void => {
      moved.push([Math.round(at[0] + along * distance), Math.round(at[1] + across * distance)]);
    };
    const last = sides.at(i - 1)!;
    const side = sides[i]!;
    const { sin, cos, inward } = turns[i]!;
    if (inward && isLeft.at(i - 1) && isLeft[i]) {
      put((last.x + side.x) / (1 + cos), (last.y + side.y) / (1 + cos));
      continue;
    }
    put(last.x, last.y);
    // By way of the corner, a side that is taken away whole is wound round the wrong way.
    if (inward) put(0, 0);
    const count = inward ? 0 : Math.abs(Math.atan2(sin, cos) / step);
    for (let k = 1; k < count; k += 1) {
      const turnSin = Math.sin(step * k);
      const turnCos = Math.cos(step * k);
      put(last.x * turnCos - last.y * turnSin, last.x * turnSin + last.y * turnCos);
    }
    put(side.x, side.y);
  }
  return moved;
}
