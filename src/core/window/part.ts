import { type Area, perimeterOf, sizeOf } from "../geometry/area.ts";
import { boxOf } from "../geometry/box.ts";
import type { Point } from "../geometry/point.ts";
import type { Card } from "./card.ts";

/** A line that is not cut: pressed with a blunt tool, or drawn to show a position. */
export type Line = readonly Point[];

/** What a position line shows. */
export type MarkKind =
  | "tab-behind"
  | "button"
  | "glue-behind-frame"
  | "light-here"
  | "first-picture-leaf"
  | "last-picture-leaf";

export interface PositionMark {
  readonly line: Line;
  /** Undefined on a line that another line of its mark explains. */
  readonly kind: MarkKind | undefined;
}

/** What a part is. Gauges and the card that leaves are folded over are no parts of the window, but are cut from card as they are. */
export type PartKind =
  | "base-frame"
  | "glazing"
  | "door"
  | "closure-tab"
  | "decoration-guide"
  | "holder"
  | "largest-motif"
  | "motif"
  | "scoring-gauge"
  | "corner-gauge"
  | "folding-card";

/**
 * A flat part to cut, mm; x right, y down, as seen from the front (the face toward the viewer).
 * Parts that lie on the book share one frame: y from the head; x from the middle of the fan, along the front level's tips
 * (wrap) or straight across (flat). Other parts have a frame of their own.
 */
export interface Part {
  /** One of a kit's parts, also in addresses and file names: small letters, digits and hyphens. */
  readonly id: string;
  readonly kind: PartKind;
  /** A motif's own name, in its author's words. */
  readonly motif?: string;
  readonly material: "card" | "acetate" | "paper";
  /** Colour of the card, where the kit states it. */
  readonly card?: Card;
  readonly count: number;
  /** What x means: along the tips, straight across, or the part's own. */
  readonly frame: "wrap" | "flat" | "own";
  /** Closed outlines to cut: outer ones one way, holes the other. */
  readonly outlines: Area;
  readonly scores: readonly Line[];
  readonly marks: readonly PositionMark[];
}

export interface PartSize {
  readonly width: number;
  readonly height: number;
  /** mm², holes taken off. */
  readonly area: number;
  /** mm of cutting: all outlines. */
  readonly perimeter: number;
}

export function sizeOfPart(part: Part): PartSize {
  const box = boxOf(part.outlines);
  return {
    width: box.right - box.left,
    height: box.bottom - box.top,
    area: sizeOf(part.outlines),
    perimeter: perimeterOf(part.outlines),
  };
}
