import type { Area } from "../geometry/area.ts";
import type { Point } from "../geometry/point.ts";
import type { Card } from "./card.ts";
import type { Part } from "./part.ts";

/** A silhouette to set on the window, in units of its own. */
export interface Motif {
  readonly name: string;
  readonly area: Area;
}

/** A length on the closed window: in mm, or as a share of the frame's width or height (0.5 is its middle). */
export type WindowLength = { readonly mm: number } | { readonly share: number };

/** A length of the window in mm, `along` being what shares are of. */
export function inMm(length: WindowLength, along: number): number {
  return "mm" in length ? length.mm : length.share * along;
}

/** A motif that the kit asks for: its area stands as it is set, mirrored and turned already. */
export interface MotifWish extends Motif {
  /** Middle of its box, from the frame's left edge and from its upper one; undefined for the next free seat. */
  readonly at: readonly [WindowLength, WindowLength] | undefined;
  /** Of its box. One alone keeps the motif's shape; without both it is sized to the light or to the hole. */
  readonly width: WindowLength | undefined;
  readonly height: WindowLength | undefined;
  /** Spacers between the glazing and the motif: 0 lies flat on it. */
  readonly spacers: number;
  readonly card: Card | undefined;
  readonly coversLight: boolean;
}

/** A motif as it is cut, in a frame of its own whose corner is the corner of its box, with its place on the window. */
export interface MotifPart extends Part {
  /** Upper left corner of its box in the frame of the parts on the book. */
  readonly seat: Point;
  readonly spacers: number;
}

/** Whether a part is a motif. */
export function isMotif(part: Part): part is MotifPart {
  return "seat" in part;
}

/** A motif's outlines where it is set, in the frame of the parts on the book. */
export function setOutlines({ outlines, seat: [left, top] }: Pick<MotifPart, "outlines" | "seat">): Area {
  return outlines.map((ring) => ring.map(([x, y]) => [left + x, top + y] as const));
}
