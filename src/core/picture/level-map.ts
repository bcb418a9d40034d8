import type { FillRule, Ring } from "../geometry/point.ts";

/** One area of the picture at one level (1 = proudest). */
export interface LevelShape {
  readonly level: number;
  readonly rule: FillRule;
  readonly rings: readonly Ring[];
}

/**
 * The picture as depths: later shapes cover earlier ones, what nothing covers is `background`.
 * Picture units, x right, y down, box from 0,0 to width,height; shapes may reach beyond the box, the picture does not.
 */
export interface LevelMap {
  readonly width: number;
  readonly height: number;
  readonly background: number;
  readonly shapes: readonly LevelShape[];
}
