import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { type Crease, isTurned } from "../../core/corner/crease.ts";
import { creasesOf } from "../../core/corner/leaf-fold.ts";
import type { CornerLeaf, CornerPattern } from "../../core/pattern/corner-pattern.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import { leafArguments } from "../../words/bench.ts";
import { heardLength } from "../../words/heard.ts";
import { leafName } from "../../words/leaves.ts";
import { formatLength, formatNumber, formatSize } from "../../words/lengths.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { borderText, leftOutBefore } from "./leaf-card.ts";

type CornerPlan = BenchPlan<CornerPattern>;

/** Everything that is shown of one leaf whose corners are folded, as text; lengths in the maker's units. */
export interface CornerCard {
  readonly source: CornerLeaf;
  /** What the big figure is: a printed page, or a leaf that has none. */
  readonly big: string;
  readonly bigIsPage: boolean;
  /** Printed recto, or which unnumbered leaf it is. */
  readonly bookPage: string;
  /** Empty on border leaves. */
  readonly patternPage: string;
  /** `Border leaf 3 of 12 before the picture`; empty on picture leaves. */
  readonly border: string;
  /** A line for each crease in the order of the hands. */
  readonly folds: readonly string[];
  /** What else to know before folding. */
  readonly notes: readonly string[];
  /** The whole leaf in a few sentences, to be spoken. */
  readonly spoken: string;
}

/** The card of one of the plan's stops. */
export function cornerCard(plan: CornerPlan, leaf: LeafNumber, style: LengthStyle): CornerCard {
  const source = cornerLeafOf(plan, leaf);
  const { patternPage, bookPage, name } = source;
  const card = {
    source,
    big: bookPage === null ? say.benchBigLeaf({ leaf }) : leafName(name),
    bigIsPage: bookPage !== null,
    bookPage: leafName(name),
    patternPage: patternPage === null ? "" : String(patternPage),
    border: borderText(plan, source),
    folds: creasesOf(source.fold).map((crease) => foldWords(crease, style)),
    notes: notesOf(source, style),
  };
  return { ...card, spoken: spokenOf(plan, card, style) };
}

/** The leaf of a number. */
export function cornerLeafOf({ pattern }: Pick<CornerPlan, "pattern">, leaf: LeafNumber): CornerLeaf {
  return pattern.leaves.find((one) => one.leaf === leaf)!;
}

/** Heights of a leaf's marks on the fore-edge, mm from the head; each once. */
export function cornerMarks({ fold }: CornerLeaf): number[] {
  return [...new Set(creasesOf(fold).map(({ from }) => from.at))];
}

function foldWords(crease: Crease, style: LengthStyle): string {
  const { corner, from, to } = crease;
  const told = { corner, at: formatLength(from.at, style) };
  return isTurned(crease)
    ? say.benchCornerFoldTo({ ...told, end: formatSize(to.depth, style.units) })
    : say.benchCornerFold(told);
}

function notesOf({ fold }: CornerLeaf, { units }: LengthStyle): string[] {
  if (fold.kind === "straight") return [say.benchCornerWhole({ depth: formatSize(fold.depth, units) })];
  if (fold.kind === "middle") return [say.benchCornerMiddle()];
  const { creases, turn } = fold;
  const folded = creases[0]?.corner;
  return [
    ...(creases.length === 0 ? [say.benchCornerNone()] : []),
    ...(creases.length === 1 ? [say.benchCornerOne({ edge: folded === "head" ? "tail" : "head" })] : []),
    ...(turn ? [say.benchCornerTurn(turn)] : []),
  ];
}

function spokenOf(plan: CornerPlan, card: Omit<CornerCard, "spoken">, style: LengthStyle): string {
  const { source, border, patternPage, folds, notes } = card;
  const marks = cornerMarks(source).map((mark) => formatNumber(mark, style));
  const leftOut = leftOutBefore(plan, source.leaf);
  return [
    say.benchSpokenLeaf(leafArguments(source.leaf, source.name)),
    border === "" ? say.benchSpokenPatternPage({ page: patternPage }) : say.benchSpokenBorder({ border }),
    ...(marks.length > 0
      ? [say.benchSpokenMarks({ count: marks.length, units: style.units, marks: marks.join("; ") })]
      : []),
    ...folds.map((one) => `${one}.`),
    ...notes,
    ...(leftOut.length > 0 ? [say.benchSpokenLeftOut({ leaves: listText(leftOut) })] : []),
  ].join(" ");
}

/** A leaf as a voice says it, phrase by phrase: its page, its marks with their corners. */
export function cornerHeard(plan: CornerPlan, leaf: LeafNumber, style: LengthStyle): string[] {
  const source = cornerLeafOf(plan, leaf);
  const creases = creasesOf(source.fold);
  return [
    source.name.kind === "numbered"
      ? say.benchHeardPage({ page: source.name.recto })
      : say.benchSpokenLeaf(leafArguments(leaf, source.name)),
    ...(source.patternPage === null ? [say.benchHeardBorder()] : []),
    ...(source.fold.kind === "straight" ? [say.benchCornerHeardWhole()] : []),
    ...(creases.length > 0 ? [say.benchHeardMarks({ count: cornerMarks(source).length, units: style.units })] : []),
    ...creases.map((crease) => foldHeard(crease, style)),
  ];
}

/** One mark with the corners that are folded at it; `mark` counts from 0 at the head. */
export function cornerMarkHeard(plan: CornerPlan, leaf: LeafNumber, mark: number, style: LengthStyle): string[] {
  const source = cornerLeafOf(plan, leaf);
  const at = cornerMarks(source)[mark];
  return creasesOf(source.fold)
    .filter(({ from }) => from.at === at)
    .map((crease) => foldHeard(crease, style));
}

function foldHeard(crease: Crease, style: LengthStyle): string {
  const { corner, from, to } = crease;
  const told = { corner, at: heardLength(from.at, style) };
  return isTurned(crease)
    ? say.benchCornerHeardFoldTo({ ...told, end: heardLength(to.depth, style) })
    : say.benchCornerHeardFold(told);
}
