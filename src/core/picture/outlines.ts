import type { LevelShape } from "./level-map.ts";

/** The closed outlines of a picture as typed columns, end to end: the last corner of each is its first one again. */
export interface Outlines {
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Pieces of outlines, so that few need be followed for a line: each goes from a corner to another. */
  readonly pieces: readonly Piece[];
}

export interface Piece {
  readonly first: number;
  readonly last: number;
  /** From where to where it reaches. */
  readonly least: number;
  readonly most: number;
  /** Number of the shape that it bounds, from the lowest. */
  readonly owner: number;
}

/** Sides of a piece. */
const SIDES = 64;

export function outlinesOf(shapes: readonly LevelShape[]): Outlines {
  const corners = shapes.reduce((sum, { rings }) => sum + rings.reduce((all, ring) => all + ring.length + 1, 0), 0);
  const [x, y] = [new Float64Array(corners), new Float64Array(corners)];
  const pieces: Piece[] = [];
  let end = 0;
  for (const [owner, { rings }] of shapes.entries())
    for (const ring of rings) {
      const start = end;
      for (const corner of ring) {
        x[end] = corner[0];
        y[end] = corner[1];
        end += 1;
      }
      if (end === start) continue;
      x[end] = x[start]!;
      y[end] = y[start]!;
      for (let first = start; first < end; first += SIDES)
        pieces.push(pieceOf(x, first, Math.min(first + SIDES, end), owner));
      end += 1;
    }
  return { x, y, pieces };
}

function pieceOf(x: Float64Array, first: number, last: number, owner: number): Piece {
  let least = x[first]!;
  let most = least;
  for (let corner = first + 1; corner <= last; corner += 1) {
    const across = x[corner]!;
    if (across < least) least = across;
    if (across > most) most = across;
  }
  return { first, last, least, most, owner };
}
