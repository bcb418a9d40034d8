import type { Fan } from "../fan/fan.ts";
import { fanOf } from "../pattern/fan-of.ts";
import type { PatternBase } from "../pattern/pattern.ts";

/** How wide the folded book stands. Angles radians, widths mm. */
export interface Holding {
  readonly opening: number;
  readonly restingOpening: number;
  /** Folded edges of the outer picture leaves at the head, at the wanted opening: the hold width that page and packet give. */
  readonly holdWidth: number;
  /** The same at the opening that the flaps force, when that is wider. */
  readonly restingWidth: number;
  /** Whether the book closes as far as the picture wants. */
  readonly holds: boolean;
}

/** The widths of a pattern as its picture wants them and as its flaps allow them; `widthIn` is the pattern's hold width in a fan. */
export function holdingOf(pattern: PatternBase, widthIn: (fan: Fan) => number): Holding {
  const { opening, restingOpening, holdWidth } = pattern.fit;
  return {
    opening,
    restingOpening,
    holdWidth,
    restingWidth: widthIn({ ...fanOf(pattern), opening: Math.max(opening, restingOpening) }),
    holds: restingOpening <= opening,
  };
}
