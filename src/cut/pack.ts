import { MaxRectsPacker } from "maxrects-packer/dist/maxrects-packer.mjs";
import { boxOf } from "../geometry/area.ts";
import type { Point } from "../geometry/point.ts";
import type { Part } from "../insert/part.ts";
import { packOnShelves } from "./shelves.ts";

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

/** Orders in which parts are offered to the packing, the greatest first. None is best for all sets, so each is tried. */
const ORDERS: readonly ((part: Part) => number)[] = [
  (part) => sizeWithLines(part).width * sizeWithLines(part).height,
  (part) => Math.max(sizeWithLines(part).width, sizeWithLines(part).height),
  (part) => sizeWithLines(part).height,
  (part) => sizeWithLines(part).width,
];

/**
 * Packs parts (each as often as its count) into fields of a size, quarter turns allowed: the fewest fields of several orders.
 * Plain shelves are tried last, so that the result never needs more than they do.
 */
export function packParts(parts: readonly Part[], width: number, height: number): Packing {
  const pieces = parts.flatMap((part) => Array.from({ length: part.count }, () => part));
  const fits = (part: Part): boolean => {
    const { width: w, height: h } = sizeWithLines(part);
    return (w <= width && h <= height) || (h <= width && w <= height);
  };
  const fitting = pieces.filter(fits);
  const tries = [
    ...ORDERS.map((measure) => {
      const ordered = fitting.toSorted((a, b) => measure(b) - measure(a));
      return packInOrder(ordered, width, height);
    }),
    shelved(fitting, width, height),
  ];
  const fewest = Math.min(...tries.map((fields) => fields.length));
  return {
    fields: tries.find((fields) => fields.length === fewest)!,
    tooLarge: pieces.filter((part) => !fits(part)),
  };
}

function packInOrder(pieces: readonly Part[], width: number, height: number): PlacedPart[][] {
  const options = { smart: false, pot: false, square: false, allowRotation: true };
  const packer = new MaxRectsPacker<Part>(width, height, APART, options);
  for (const part of pieces) {
    const { width: w, height: h } = sizeWithLines(part);
    packer.add(w, h, part);
  }
  return packer.bins.map((bin) =>
    bin.rects.map((rect) => ({
      part: rect.data,
      place: placer(rect.data, rect.x, rect.y, rect.rot),
      x: rect.x,
      y: rect.y,
      width: rect.width,
      height: rect.height,
    })),
  );
}

function shelved(pieces: readonly Part[], width: number, height: number): PlacedPart[][] {
  return packOnShelves(pieces, sizeWithLines, { width, height }, APART).map((shelf) =>
    shelf.map(({ piece, x, y, turned, ...size }) => ({
      part: piece,
      place: placer(piece, x, y, turned),
      x,
      y,
      ...size,
    })),
  );
}

/** What a part takes up with its scores and marks. */
export function extentOf(part: Part): ReturnType<typeof boxOf> {
  return boxOf([...part.outlines, ...part.scores, ...part.marks.map((mark) => mark.line)]);
}

function sizeWithLines(part: Part): { width: number; height: number } {
  const box = extentOf(part);
  return { width: box.right - box.left, height: box.bottom - box.top };
}

function placer(part: Part, x: number, y: number, turned: boolean): (point: Point) => Point {
  const box = extentOf(part);
  if (!turned) return ([px, py]) => [x + px - box.left, y + py - box.top];
  return ([px, py]) => [x + box.bottom - py, y + px - box.left];
}
