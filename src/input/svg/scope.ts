import type { Element } from "@xmldom/xmldom";
import type { Affine } from "../../core/geometry/affine.ts";
import type { ContextPaint } from "./paint.ts";
import type { Style } from "./style-property.ts";
import type { Calling } from "./svg-picture.ts";
import type { Viewport } from "./view-box.ts";

/** What an element takes over from what it is rendered under. */
export interface Scope {
  /** From the element's user space to the picture. */
  readonly map: Affine;
  readonly style: Style;
  /** What elements around are called, nearest first. */
  readonly called: readonly Calling[];
  readonly viewport: Viewport;
  /** Levels of elements around, counting those that `use` brings in. */
  readonly depth: number;
  /** Targets of the `use` elements around, and the clip paths and masks that are being read. */
  readonly showing: readonly Element[];
  readonly context: ContextPaint;
  /** Inside a clip path shapes count as they are, whatever their paint. */
  readonly clipping: boolean;
}
