import type { Element } from "@xmldom/xmldom";
import type { Affine } from "../../core/geometry/affine.ts";
import type { ContextPaint } from "./paint.ts";
import type { Style } from "./style-property.ts";
import type { Viewport } from "./view-box.ts";

/** What an element takes over from what it is rendered under. */
export interface Scope {
  /** From the element's user space to the picture. */
  readonly map: Affine;
  readonly style: Style;
  /** Ids of what is around, nearest first. */
  readonly ids: readonly string[];
  readonly viewport: Viewport;
  /** Levels of elements around, counting those that `use` brings in. */
  readonly depth: number;
  /** Targets of the `use` elements around. */
  readonly showing: readonly Element[];
  readonly context: ContextPaint;
}
