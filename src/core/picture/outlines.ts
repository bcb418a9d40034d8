import type { LevelShape } from "./level-map.ts";

/**
 * The outlines of a picture as typed columns, cut into short pieces, that which reaches highest first. Piece p goes from
 * corner `starts[p]` to corner `starts[p + 1] - 1`; where an outline goes on, the next piece of it begins with that corner again.
 */
export interface Outlines {
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly starts: Int32Array;
  /** Number of the shape that a piece bounds. */
  readonly shapes: Int32Array;
  /** From where to where a piece reaches. */
  readonly least: Float64Array;
  readonly most: Float64Array;
}

/** Sides of a piece, at most. */
const SIDES = 32;

/** A piece of an outline: its corners from `from` to `end`, that one too. */
interface Piece {
  readonly shape: number;
  readonly ring: LevelShape["rings"][number];
  readonly from: number;
  readonly end: number;
  readonly top: number;
}

export function outlinesOf(shapes: readonly LevelShape[]): Outlines {
  const pieces = shapes.flatMap((shape, number) => shape.rings.flatMap((ring) => piecesOf(ring, number)));
  pieces.sort((a, b) => a.top - b.top);
  const corners = pieces.reduce((sum, { from, end }) => sum + end - from + 1, 0);
  const [x, y] = [new Float64Array(corners), new Float64Array(corners)];
  const [least, most] = [new Float64Array(pieces.length), new Float64Array(pieces.length)];
  const starts = new Int32Array(pieces.length + 1);
  let at = 0;
  for (const [piece, { ring, from, end }] of pieces.entries()) {
    let [left, right] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (let i = from; i <= end; i += 1) {
      const corner = ring[i === ring.length ? 0 : i]!;
      x[at] = corner[0];
      y[at] = corner[1];
      at += 1;
      if (corner[0] < left) left = corner[0];
      if (corner[0] > right) right = corner[0];
    }
    least[piece] = left;
    most[piece] = right;
    starts[piece + 1] = at;
  }
  return { x, y, starts, shapes: Int32Array.from(pieces, ({ shape }) => shape), least, most };
}

function piecesOf(ring: LevelShape["rings"][number], shape: number): Piece[] {
  const pieces: Piece[] = [];
  for (let from = 0; from < ring.length; from += SIDES) {
    const end = Math.min(from + SIDES, ring.length);
    let top = ring[from]![1];
    for (let i = from + 1; i < end; i += 1) top = Math.min(top, ring[i]![1]);
    pieces.push({ shape, ring, from, end, top });
  }
  return pieces;
}
