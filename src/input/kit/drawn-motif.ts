import type { Area } from "../../core/geometry/area.ts";
import type { Size } from "../../core/geometry/box.ts";

/** A motif as it is drawn, neither mirrored nor turned. */
export interface DrawnMotif {
  readonly area: Area;
  /** What its stated width and height are those of: its source, without what is joined. In mm where both are known. */
  readonly size: Size;
  readonly notes: readonly string[];
}
