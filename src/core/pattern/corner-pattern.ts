import type { Crease } from "../corner/crease.ts";
import { creasesOf, type LeafFold } from "../corner/leaf-fold.ts";
import type { TurnFacts } from "../corner/turns.ts";
import type { CornerWish } from "../kit/corner-wish.ts";
import type { Fit, Pattern, PatternBase, PatternLeafBase } from "./pattern.ts";

/** One leaf that is folded without a cut. */
export interface CornerLeaf extends PatternLeafBase {
  /** Front-view x of the unfolded fore-edge. */
  readonly x: number;
  readonly fold: LeafFold;
}

/** What holds for a whole kit that is folded by corners. */
export interface CornerFacts extends CornerWish {
  readonly turns: TurnFacts;
  /** Levels of the picture that are not shown, but the background. */
  readonly leftOut: readonly number[];
  /** Where straight folds of leaves lie that show nothing, mm from the fore-edge; undefined where those are folded to the middle. */
  readonly emptyDepth: number | undefined;
  /** Leaves on which a crease is steeper than 45°. */
  readonly turned: number;
}

/** Everything that a maker needs to mark and fold where nothing is cut; in book order. */
export interface CornerPattern extends PatternBase {
  readonly corner: CornerFacts;
  readonly fit: Fit<"corner">;
  readonly leaves: readonly CornerLeaf[];
}

/** A pattern of a kit, whichever way its leaves are made: `corner` tells which. */
export type AnyPattern = Pattern | CornerPattern;

/** Creases of a pattern that a hand makes: straight folds of whole leaves are not among them. */
export function creasesIn({ leaves }: Pick<CornerPattern, "leaves">): Crease[] {
  return leaves.flatMap(({ fold }) => creasesOf(fold));
}

/** What closes and lights a pattern; where corners are folded there is neither. */
export function closingOf(pattern: AnyPattern): Pick<Pattern, "pocket" | "window"> {
  return pattern.corner ? { pocket: undefined, window: undefined } : pattern;
}
