/// <reference path="./maxrects-packer.d.ts" />
import { MaxRectsPacker } from "maxrects-packer/dist/maxrects-packer.mjs";
import { type Box, boxOf } from "../geometry/box.ts";
import type { Point } from "../geometry/point.ts";
import type { Part } from "../window/part.ts";
import { packOnShelves } from "./shelves.ts";

/** A part with its place: `place` maps the part's own frame to the field's, turned by a quarter where the packing turned it. */
export interface PlacedPart<P extends Part = Part> {
  readonly part: P;
  readonly place: (point: Point) => Point;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Parts on as few fields as the packing finds, and those that are larger than a field. */
export interface Packing<P extends Part = Part> {
  readonly fields: readonly (readonly PlacedPart<P>[])[];
  readonly tooLarge: readonly P[];
}

/** Free space between parts, mm. */
export const APART = 4;

/** How parts are packed into fields of a size, mm. */
export type Pack = <P extends Part>(parts: readonly P[], width: number, height: number) => Packing<P>;

/** A part as it is packed: what it takes up, measured once. */
export interface Piece<P extends Part = Part> {
  readonly part: P;
  readonly box: Box;
  readonly width: number;
  readonly height: number;
}

/** Orders in which pieces are offered to the packing, the greatest first. None is best for all sets, so each is tried. */
const ORDERS: readonly ((piece: Piece) => number)[] = [
  ({ width, height }) => width * height,
  ({ width, height }) => Math.max(width, height),
  ({ height }) => height,
  ({ width }) => width,
];

/**
 * Packs parts (each as often as its count) into fields of a size, quarter turns allowed: the fewest fields of several orders.
 * Plain shelves are tried last, so that the result never needs more than they do.
 */
export function packParts<P extends Part>(parts: readonly P[], width: number, height: number): Packing<P> {
  const pieces = piecesOf(parts);
  const fits = ({ width: w, height: h }: Piece): boolean => (w <= width && h <= height) || (h <= width && w <= height);
  return {
    fields: fewestFields(pieces.filter(fits), width, height),
    tooLarge: pieces.filter((piece) => !fits(piece)).map(({ part }) => part),
  };
}

/** Parts as pieces, each as often as it is cut. */
export function piecesOf<P extends Part>(parts: readonly P[]): Piece<P>[] {
  return parts.flatMap((part) => {
    const box = extentOf(part);
    const piece = { part, box, width: box.right - box.left, height: box.bottom - box.top };
    return Array.from({ length: part.count }, () => piece);
  });
}

function fewestFields<P extends Part>(pieces: readonly Piece<P>[], width: number, height: number): PlacedPart<P>[][] {
  let best: PlacedPart<P>[][] | undefined;
  for (const measure of ORDERS) {
    // One field cannot be bettered.
    if (best && best.length <= 1) return best;
    const ordered = pieces.toSorted((a, b) => measure(b) - measure(a));
    const fields = packInOrder(ordered, width, height);
    if (!best || fields.length < best.length) best = fields;
  }
  const shelved = packOnShelves(pieces, (piece) => piece, { width, height }, APART);
  if (best && best.length <= shelved.length) return best;
  return shelved.map((field) => field.map(({ piece, ...spot }) => placed(piece, spot)));
}

function packInOrder<P extends Part>(pieces: readonly Piece<P>[], width: number, height: number): PlacedPart<P>[][] {
  const options = { smart: false, pot: false, square: false, allowRotation: true };
  const packer = new MaxRectsPacker<Piece<P>>(width, height, APART, options);
  for (const piece of pieces) packer.add(piece.width, piece.height, piece);
  return packer.bins.map((bin) =>
    bin.rects.map(({ x, y, width, height, rot, data }) => placed(data, { x, y, width, height, turned: rot })),
  );
}

function placed<P extends Part>(
  { part, box }: Piece<P>,
  spot: Omit<PlacedPart, "part" | "place"> & { readonly turned: boolean },
): PlacedPart<P> {
  const { x, y, width, height, turned } = spot;
  return { part, place: placer(box, x, y, turned), x, y, width, height };
}

/** What a part takes up with its scores and marks. */
export function extentOf(part: Part): Box {
  return boxOf([...part.outlines, ...part.scores, ...part.marks.map((mark) => mark.line)]);
}

function placer(box: Box, x: number, y: number, turned: boolean): (point: Point) => Point {
  if (!turned) return ([px, py]) => [x + px - box.left, y + py - box.top];
  return ([px, py]) => [x + box.bottom - py, y + px - box.left];
}
