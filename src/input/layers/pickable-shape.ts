import type { FillRule, Ring } from "../../core/geometry/point.ts";
import type { Selector } from "../picture/selection.ts";

/** A shape of a drawing that can be picked for a level. */
export interface PickableShape {
  /** The file as the front matter names it. */
  readonly file: string;
  /** What picks it; what picks the fewest others stands first. Empty where nothing can. */
  readonly selectors: readonly Selector[];
  /** As messages call it: `<path> #wave`. */
  readonly name: string;
  /** Line in its file, 1-based. */
  readonly line: number;
  /** As `#rrggbb`; undefined for what is no plain colour. */
  readonly colour: string | undefined;
  readonly rule: FillRule;
  /** In units of the picture's box, as the level map has them; neither joined nor cut. */
  readonly rings: readonly Ring[];
  /** 1 = proudest; undefined where it has none. */
  readonly level: number | undefined;
}
