import { MaxRectsPacker } from "maxrects-packer/dist/maxrects-packer.mjs";
import { boxOf } from "../geometry/area.ts";
import type { Point } from "../geometry/point.ts";
import type { Part } from "../insert/part.ts";

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
  const packer = new MaxRectsPacker<Part>(width, height, APART, {
    smart: false,
    pot: false,
    square: false,
    allowRotation: true,
  });
  const area = (part: Part): number => sizeWithLines(part).width * sizeWithLines(part).height;
  for (const part of pieces.filter(fits).toSorted((a, b) => area(b) - area(a))) {
    const { width: w, height: h } = sizeWithLines(part);
    packer.add(w, h, part);
  }
  return {
    fields: packer.bins.map((bin) =>
      bin.rects.map((rect) => ({
        part: rect.data,
        place: placer(rect.data, rect.x, rect.y, rect.rot),
        x: rect.x,
        y: rect.y,
        width: rect.width,
        height: rect.height,
      })),
    ),
    tooLarge: pieces.filter((part) => !fits(part)),
  };
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
