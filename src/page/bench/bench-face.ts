import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import type { StepId } from "../../core/steps/work-step.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import type { DrawingSpace } from "../../output/drawing/bench/edge-layout.ts";
import type { FrontOptions } from "../../output/drawing/front/book-picture.ts";
import type { SmallFront } from "../../output/drawing/front/here.ts";

/** Everything that the page writes of one leaf. */
export interface LeafShown {
  /** What the big figure is: a printed page, or a leaf that has none. */
  readonly big: string;
  readonly bigIsPage: boolean;
  /** Printed recto, or which unnumbered leaf it is. */
  readonly bookPage: string;
  readonly patternPage: string;
  /** Empty on picture leaves. */
  readonly border: string;
  /** Levels of the folds from head to tail; none where there are no levels. */
  readonly folds: readonly Chip[];
  /** What the leaf needs, line by line. */
  readonly lines: readonly (Chip & { readonly words: string })[];
  readonly notes: readonly string[];
  readonly spoken: string;
}

/** A number on a tint: of a level. Without one it is the order of the hands. */
export interface Chip {
  readonly number: number;
  readonly tone: string | undefined;
}

/** Where a batch is pressed to be measured. */
export interface Pressed {
  /** How many of the leaves have a flap there; undefined where all have. */
  readonly flaps: number | undefined;
  readonly words: string;
}

/**
 * What the bench shows of patterns of one kind. Its functions take the plans of their own kind alone, and are only reached by
 * `faceOf`, which looks at the pattern.
 */
export interface BenchFace<Found extends AnyPattern = AnyPattern> {
  leaf(plan: BenchPlan<Found>, leaf: LeafNumber, style: LengthStyle): LeafShown;
  /** Draws the leaf into a space. */
  edge(plan: BenchPlan<Found>, leaf: LeafNumber, style: LengthStyle, space: DrawingSpace): string;
  /** Heights of the leaf's marks, mm from the head. */
  marks(plan: BenchPlan<Found>, leaf: LeafNumber): readonly number[];
  /** What the voice says of a leaf, and of one of its marks. */
  heard(plan: BenchPlan<Found>, leaf: LeafNumber, style: LengthStyle): readonly string[];
  markHeard(plan: BenchPlan<Found>, leaf: LeafNumber, mark: number, style: LengthStyle): readonly string[];
  /** What a whole step says, and its drawing; empty where it has none. */
  stepText(id: StepId, kit: Kit, pattern: Found): string;
  stepFigure(id: StepId, plan: BenchPlan<Found>): Promise<string>;
  /** The front in small, and as it is drawn at its size. */
  front(pattern: Found): SmallFront;
  picture(pattern: Found, options: FrontOptions): string;
  pressed(pattern: Found, leaves: number, style: LengthStyle): Pressed;
  /** What is said where a leaf is left out. */
  readonly lost: LostWords;
}

export interface LostWords {
  /** The button that asks for it. */
  readonly button: () => string;
  /** What may be done instead. */
  readonly instead: () => readonly string[];
  /** So many ticks would go. */
  readonly ticks: (count: number) => string;
  /** What becomes of the leaf itself. */
  readonly away: (leaf: LeafNumber) => string;
}
