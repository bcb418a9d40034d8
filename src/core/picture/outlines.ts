import type { LevelShape } from "./level-map.ts";

/** The closed outlines of a picture as typed columns, end to end: the last corner of each is its first one again. */
export interface Outlines {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** The first corner of each, and after them where the last one ends. */
  readonly starts: Int32Array;
  /** From where to where each reaches. */
  readonly least: Float64Array;
  readonly most: Float64Array;
  /** Number of the shape that each bounds, from the lowest. */
  readonly owners: Int32Array;
}

export function outlinesOf(shapes: readonly LevelShape[]): Outlines {
  const rings = shapes.flatMap((shape, owner) => shape.rings.map((ring) => ({ ring, owner })));
  const corners = rings.reduce((sum, { ring }) => sum + ring.length + 1, 0);
  const [x, y] = [new Float64Array(corners), new Float64Array(corners)];
  const [least, most] = [new Float64Array(rings.length), new Float64Array(rings.length)];
  const starts = new Int32Array(rings.length + 1);
  let end = 0;
  for (const [i, { ring }] of rings.entries()) {
    starts[i] = end;
    let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const corner of ring) {
      const across = corner[0];
      x[end] = across;
      y[end] = corner[1];
      if (across < left) left = across;
      if (across > right) right = across;
      end += 1;
    }
    if (ring.length > 0) {
      x[end] = x[starts[i]!]!;
      y[end] = y[starts[i]!]!;
      end += 1;
    }
    least[i] = left;
    most[i] = right;
  }
  starts[rings.length] = end;
  return { x, y, starts, least, most, owners: Int32Array.from(rings, ({ owner }) => owner) };
}
