import type { FillRule, Ring } from "../../core/geometry/point.ts";

/** One painted shape of a picture, flattened to straight outlines. */
export interface PaintedShape {
  /** Element name, for messages: `circle`, `path` … */
  readonly element: string;
  /** Line in the SVG file where the element starts, 1-based. */
  readonly line: number;
  /** Ids of the element itself and of what it is rendered under (groups, `use`), nearest first. */
  readonly ids: readonly string[];
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
  /** Width and height of the viewBox, in picture units; both > 0. */
  readonly width: number;
  readonly height: number;
  readonly shapes: readonly PaintedShape[];
  /** Every id in the file with its line, whether painted or not. */
  readonly ids: ReadonlyMap<string, number>;
  readonly notes: readonly PictureNote[];
}
