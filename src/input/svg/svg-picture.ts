import type { FillRule, Ring } from "../../core/geometry/point.ts";

/** What an element may be named by. */
export interface Calling {
  /** As written; undefined without one. */
  readonly id: string | undefined;
  /** Names that people gave it, the most deliberate first; white space folded, letters composed. */
  readonly names: readonly string[];
  readonly classes: readonly string[];
}

/** One painted shape of a picture, or its stroke, flattened to straight outlines. */
export interface PaintedShape {
  /** Element name, for messages: `circle`, `path` … */
  readonly element: string;
  /** Line in the SVG file where the element starts, 1-based. */
  readonly line: number;
  /** What the element itself is called, and then what it is rendered under (groups, `use`), nearest first. */
  readonly called: readonly Calling[];
  readonly paint: "fill" | "stroke";
  /** The paint as `#rrggbb`; undefined for gradients, patterns and what is no colour. */
  readonly colour: string | undefined;
  /** Of its paint with all opacities, above 0 to 1. */
  readonly alpha: number;
  readonly rule: FillRule;
  /** Outlines in picture units; x to the right, y down, the viewBox's corner at 0,0. */
  readonly rings: readonly Ring[];
}

/** What could not be honoured but does not change which areas are filled. */
export interface PictureNote {
  readonly line: number;
  readonly message: string;
}

/** A picture as painted: `shapes` in painter order, later ones cover earlier ones. */
export interface SvgPicture {
  /** Width and height of the canvas, in picture units; both > 0. */
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly PaintedShape[];
  /** Every id in the file with its line, whether painted or not. */
  readonly ids: ReadonlyMap<string, number>;
  readonly notes: readonly PictureNote[];
}
