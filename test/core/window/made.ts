import type { FrontCurve } from "../../../src/core/fan/front-curve.ts";
import type { Point, Ring } from "../../../src/core/geometry/point.ts";
import type { LevelMap } from "../../../src/core/picture/level-map.ts";
import type { MotifWish } from "../../../src/core/window/motif.ts";
import type { WindowBook } from "../../../src/core/window/window.ts";
import { extentOf } from "../geometry/plane.ts";

export function box(left: number, top: number, right: number, bottom: number): Ring {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

/** A plate with a hole, as an area: the hole runs the other way. */
export function plate(outer: Ring, hole: Ring): Ring[] {
  return [outer, [...hole].reverse()];
}

/** No true front: straight across, its middle at 50 mm, three times as long unrolled, so that no two measures are alike. */
export const CURVE: FrontCurve = {
  points: Array.from({ length: 101 }, (_, i) => at(i)),
  atAcross: at,
  atX: (x) => at(x + 50),
  atArc: (arc) => at(arc / 3 + 50),
};

function at(across: number): { x: number; z: number; across: number; arc: number } {
  return { across, x: across - 50, z: 0, arc: 3 * (across - 50) };
}

/** Left, top, right and bottom of an area, to a hundredth of a millimetre. */
export function sidesOf(area: readonly Ring[]): number[] {
  const { left, top, right, bottom } = extentOf(area);
  return [left, top, right, bottom].map((side) => Math.round(side * 100) / 100 + 0);
}

/** A picture of 100 by 100 mm: shapes from the back to the front on the background, level 2. */
export function pictureOf(...shapes: readonly (readonly [level: number, ring: readonly Point[]])[]): LevelMap {
  return {
    width: 100,
    height: 100,
    background: 2,
    shapes: shapes.map(([level, ring]) => ({ level, rule: "nonzero", rings: [ring] })),
  };
}

/** A square plate of 80 mm with a square hole of 40 mm, 10 mm below the head. */
export const SQUARES = pictureOf([1, box(10, 10, 90, 90)], [3, box(30, 30, 70, 70)]);

/** A motif of 9 by 4 mm that lies flat, its place and its size left to the program. */
export function motifWish(changes: Partial<MotifWish> = {}): MotifWish {
  return {
    name: "Gull",
    area: [box(0, 0, 9, 4)],
    at: undefined,
    width: undefined,
    height: undefined,
    spacers: 0,
    card: undefined,
    coversLight: false,
    ...changes,
  };
}

export function bookOf(map: LevelMap, changes: Partial<WindowBook> = {}): WindowBook {
  return {
    map,
    box: { head: 0, height: 100, width: 100 },
    curve: CURVE,
    pocket: undefined,
    holdWidth: 90,
    motifs: [],
    ...changes,
  };
}
