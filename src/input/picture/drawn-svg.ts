import type { LevelShape } from "../../core/picture/level-map.ts";
import type { Drawn } from "./drawn.ts";

/** A shape at its level that still knows where it comes from. */
export interface DrawnShape extends LevelShape {
  /** `<path> #wave` */
  readonly name: string;
  /** Line in its file, 1-based. */
  readonly line: number;
  /** As `#rrggbb`; undefined for what is no plain colour. */
  readonly colour: string | undefined;
}

/** What an SVG file draws. */
export interface DrawnSvg extends Drawn {
  readonly shapes: readonly DrawnShape[];
}
