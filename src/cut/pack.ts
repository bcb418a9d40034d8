import { type Box, boxOf } from "../geometry/area.ts";
import type { Point } from "../geometry/point.ts";
import type { Part } from "../insert/part.ts";
import { MaxRectangles } from "./max-rectangles.ts";

/** A part with its place: `place` maps the part's own frame to the field's, turned by a quarter where the packing turned it. */
export interface PlacedPart {
  readonly part: Part;
  readonly place: (point: Point) => Point;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Parts on as few fields as the packing finds, and those that are larger than a field. */
export interface Packing {
  readonly fields: readonly (readonly PlacedPart[])[];
  readonly tooLarge: readonly Part[];
}

/** Free space between parts, mm. */
export const APART = 4;

/** Packs parts (each as often as its count) into fields of a size, largest first, quarter turns allowed. */
export function packParts(parts: readonly Part[], width: number, height: number): Packing {
  const pieces = parts.flatMap((part) => {
    const box = extentOf(part);
    const piece = { part, box, width: box.right - box.left, height: box.bottom - box.top };
    return Array.from({ length: part.count }, () => piece);
  });
  const fits = ({ width: w, height: h }: Piece): boolean => (w <= width && h <= height) || (h <= width && w <= height);
  const area = (piece: Piece): number => piece.width * piece.height;
  const fields: { readonly free: MaxRectangles; readonly placed: PlacedPart[] }[] = [];
  for (const piece of pieces.filter(fits).toSorted((a, b) => area(b) - area(a))) {
    if (fields.some(({ free, placed }) => putPiece(piece, free, placed))) continue;
    const next = { free: new MaxRectangles(width, height, APART), placed: [] };
    putPiece(piece, next.free, next.placed);
    fields.push(next);
  }
  return {
    fields: fields.map(({ placed }) => placed),
    tooLarge: pieces.filter((piece) => !fits(piece)).map(({ part }) => part),
  };
}

/** A part as it is packed: what it takes up, measured once. */
interface Piece {
  readonly part: Part;
  readonly box: Box;
  readonly width: number;
  readonly height: number;
}

/** Puts a piece on a field; false where it finds no room. */
function putPiece(piece: Piece, free: MaxRectangles, placed: PlacedPart[]): boolean {
  const spot = free.place(piece.width, piece.height);
  if (!spot) return false;
  const { x, y, turned, ...size } = spot;
  placed.push({ part: piece.part, place: placer(piece.box, x, y, turned), x, y, ...size });
  return true;
}

/** What a part takes up with its scores and marks. */
export function extentOf(part: Part): Box {
  return boxOf([...part.outlines, ...part.scores, ...part.marks.map((mark) => mark.line)]);
}

function placer(box: Box, x: number, y: number, turned: boolean): (point: Point) => Point {
  if (!turned) return ([px, py]) => [x + px - box.left, y + py - box.top];
  return ([px, py]) => [x + box.bottom - py, y + px - box.left];
}
