import { boxOf } from "../geometry/area.ts";
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
  const pieces = parts.flatMap((part) => Array.from({ length: part.count }, () => part));
  const fits = (part: Part): boolean => {
    const { width: w, height: h } = sizeWithLines(part);
    return (w <= width && h <= height) || (h <= width && w <= height);
  };
  const area = (part: Part): number => sizeWithLines(part).width * sizeWithLines(part).height;
  const fields: { readonly free: MaxRectangles; readonly placed: PlacedPart[] }[] = [];
  for (const part of pieces.filter(fits).toSorted((a, b) => area(b) - area(a))) {
    if (fields.some(({ free, placed }) => putPart(part, free, placed))) continue;
    const next = { free: new MaxRectangles(width, height, APART), placed: [] };
    putPart(part, next.free, next.placed);
    fields.push(next);
  }
  return {
    fields: fields.map(({ placed }) => placed),
    tooLarge: pieces.filter((part) => !fits(part)),
  };
}

/** Puts a part on a field; false where it finds no room. */
function putPart(part: Part, free: MaxRectangles, placed: PlacedPart[]): boolean {
  const { width, height } = sizeWithLines(part);
  const spot = free.place(width, height);
  if (!spot) return false;
  const { x, y, turned, ...size } = spot;
  placed.push({ part, place: placer(part, x, y, turned), x, y, ...size });
  return true;
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
