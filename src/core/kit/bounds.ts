import type { Viewpoint } from "../fan/front.ts";
import { widestOpening } from "../fit/solve.ts";
import { toDegrees } from "../units/angle.ts";

/** What a figure may be at least and at most, both included: a length in mm, a whole number, an angle in degrees, or any number. */
export interface Bounds<Kind extends "length" | "count" | "degrees" | "number"> {
  readonly kind: Kind;
  readonly least: number;
  readonly most: number;
}

/** What may be stated of a book, a fit, a light and a window, whoever states it: author, teacher or reader. */
export const BOUNDS = {
  leafHeight: length(40, 600),
  leafWidth: length(30, 500),
  blockThickness: length(1, 200),
  leaves: count(4, 3000),
  /** The number of a leaf in its book. */
  leaf: count(1, 3000),
  page: count(1, 10000),
  levels: count(2, 9),
  plateLeaves: count(1, 500),
  square: length(0, 20),
  boardThickness: length(0, 10),
  depth: length(1, 200),
  gaugeLine: count(1, 40),
  packingPiece: length(0.1, 50),
  borderLeaves: count(0, 1000),
  pictureLeaves: count(2, 3000),
  head: length(0, 600),
  pictureHeight: length(5, 600),
  opening: degrees(5, 360),
  markStep: length(0.1, 5),
  leastTab: length(0, 30),
  gutterClearance: length(0, 100),
  /** How many leaf thicknesses a flap counts. */
  flapBulk: number(0, 20),
  batch: count(5, 60),
  lightDiameter: length(5, 150),
  lightHeight: length(5, 300),
  lightClearance: length(0, 20),
  lightSetback: length(0, 100),
  lightFloor: length(0, 600),
  lip: length(2, 30),
  /** Where the middle of a motif is, from a side of the frame. */
  motifPlace: length(-200, 1000),
  motifSide: length(4, 600),
  spacers: count(0, 6),
  sheetSide: length(50, 2000),
  seat: count(1, 200),
  pack: count(1, 10_000),
} as const;

/** How far a book may be opened: what is seen from the front lies flat at most. */
export function openingBounds(view: Viewpoint): Bounds<"degrees"> {
  return { ...BOUNDS.opening, most: Math.round(toDegrees(widestOpening(view))) };
}

function length(least: number, most: number): Bounds<"length"> {
  return { kind: "length", least, most };
}

function count(least: number, most: number): Bounds<"count"> {
  return { kind: "count", least, most };
}

function degrees(least: number, most: number): Bounds<"degrees"> {
  return { kind: "degrees", least, most };
}

function number(least: number, most: number): Bounds<"number"> {
  return { kind: "number", least, most };
}
