import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { Doubt } from "../../core/findings/doubt.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { lazily, once } from "../../core/lazily.ts";
import { patternAt } from "../../core/pattern/compute.ts";
import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import type { Pattern, PatternBase } from "../../core/pattern/pattern.ts";
import type { PatternedKit } from "../../core/pattern/patterned-kit.ts";
import type { Caution } from "../../core/plan/caution.ts";
import { type Counts, countsOf, difficultyOf, type Effort, effortOf } from "../../core/plan/effort.ts";
import { tackList } from "../../core/plan/tack-list.ts";
import { workOf } from "../../core/steps/work.ts";
import type { WorkStep } from "../../core/steps/work-step.ts";
import { costOf, suppliesOf } from "../../core/supplies/supplies.ts";
import type { Supply } from "../../core/supplies/supply.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import { difficultyWord } from "../../words/difficulty.ts";
import { doubtText } from "../../words/findings/doubts.ts";
import { leafAndPage } from "../../words/leaves.ts";
import { formatLength, formatNumber, styleFor } from "../../words/lengths.ts";
import { money } from "../../words/money.ts";
import { cutDepth } from "../drawing/diagrams/cut-depth.ts";
import { lineLegend } from "../drawing/diagrams/line-legend.ts";
import { measureBook } from "../drawing/diagrams/measure-book.ts";
import { wholeLeaf } from "../drawing/diagrams/whole-leaf.ts";
import type { Figure } from "../drawing/figure.ts";
import { cautionsFor } from "./cautions.ts";
import { figuresOf, type KitFigures } from "./figures.ts";
import { type Preparation, preparationOf } from "./preparation.ts";
import { type Row, rowOf } from "./row.ts";
import type { Step } from "./step.ts";
import { type DrawStep, drawStep } from "./step-drawing.ts";
import { stepsOf } from "./steps.ts";
import { type SupplyView, supplyView } from "./supply-view.ts";

/** What a kit's page shows whichever way its leaves are made, as text and figures ready to print. */
export interface KitViewBase {
  readonly slug: string;
  readonly kit: Kit;
  readonly pattern: AnyPattern;
  readonly work: readonly WorkStep[];
  readonly counts: Counts;
  readonly effort: Effort;
  readonly difficulty: string;
  readonly figures: KitFigures;
  readonly preparation: Preparation;
  readonly steps: readonly Step[];
  /** What the lines of the diagrams mean. */
  readonly legend: Figure;
  /** What is measured on a book, with this one's figures. */
  readonly measuring: Figure;
  /** How a row of the table is read: one leaf whole, and how deep a cut goes. */
  readonly reading: readonly Figure[];
  readonly supplies: readonly SupplyView[];
  readonly cautions: readonly Caution[];
  /** What may disappoint, and the same in words for a reader. */
  readonly findings: readonly Doubt[];
  readonly warnings: readonly string[];
  /** What the picture holds that does not count: for the author, never on a page for readers. */
  readonly notes: readonly string[];
  /** Spans too short to fold, each with the level it was joined to. */
  readonly merged: readonly MergedView[];
  /** Sum of the stated prices with currency, or empty. */
  readonly cost: string;
}

/** Everything that the page of a kit shows whose leaves are cut. */
export interface KitView extends KitViewBase {
  readonly way: "cut";
  readonly pattern: Pattern;
  /** The pattern with marks that a ruler in the kit's units has. */
  readonly shown: Pattern;
  /** The table's rows in the kit's own units. */
  readonly rows: readonly Row[];
  readonly tacks: TackView;
}

export interface MergedView {
  readonly leaf: LeafNumber;
  readonly place: string;
  readonly level: number;
  readonly into: number;
}

export interface TackView {
  readonly rows: readonly { readonly number: LeafNumber; readonly leaf: string; readonly place: string }[];
  /** Free stretches too short to need glue. */
  readonly held: number;
}

/** Prepares one kit for its page; what only the printed packet has is added by packet-view.ts. Pure. */
export function viewKit(computed: PatternedKit, cautions: readonly Caution[]): KitView {
  return viewKitWith(drawStep, computed, cautions);
}

/** The same with other drawings of the steps. */
export function viewKitWith(draw: DrawStep, computed: PatternedKit, cautions: readonly Caution[]): KitView {
  const { kit, pattern, findings, pictureNotes } = computed;
  const counts = countsOf(pattern);
  const effort = effortOf(counts, kit.rates);
  const style = styleFor(kit.units, kit.fit.markStep);
  const shown = atStep(kit, pattern, style.step);
  // What is counted off in the table: at a coarser ruler, marks may fall together.
  const told = shown === pattern ? counts : { ...counts, ...marksOf(countsOf(shown)) };
  const work = once(() => workOf(kit, pattern, counts));
  const supplies = once(() => suppliesOf(kit, pattern, counts).map((supply) => supplyView(supply, kit.units)));
  return lazily<KitView>({
    way: () => "cut",
    slug: () => kit.slug,
    work,
    kit: () => kit,
    pattern: () => pattern,
    shown: () => shown,
    counts: () => told,
    effort: () => effort,
    difficulty: () => difficultyWord(difficultyOf(pattern, effort)),
    figures: () => figuresOf(kit, pattern, { counts: told, effort, work: work() }),
    preparation: () => preparationOf(kit, pattern),
    rows: () => shown.leaves.map((leaf) => rowOf(leaf, shown, style)),
    steps: () => stepsOf(kit, pattern, work(), { counts: told, effort }, draw),
    legend: lineLegend,
    measuring: () => measureBook(kit),
    reading: () => [wholeLeaf(kit, shown), cutDepth(kit, shown)].filter((figure) => figure !== undefined),
    supplies,
    cautions: () => cautionsFor(cautions, work()),
    findings: () => findings,
    warnings: () => findings.map((doubt) => doubtText(doubt, kit)),
    notes: () => pictureNotes,
    tacks: () => tackView(kit, pattern),
    merged: () => mergedViews(kit, pattern),
    cost: () => costText(kit, supplies()),
  });
}

/** What hangs on the ruler's marks. */
function marksOf({ marks, cuts, folds }: Counts): Pick<Counts, "marks" | "cuts" | "folds"> {
  return { marks, cuts, folds };
}

/** Spans of a pattern that were too short to fold, in words. */
export function mergedViews(kit: Kit, pattern: Pick<PatternBase, "merged">): MergedView[] {
  return pattern.merged.map(({ leaf, from, to, level, into }) => ({
    leaf,
    place: stretch(from, to, styleFor(kit.units, kit.fit.markStep)),
    level,
    into,
  }));
}

/** The pattern with marks that a ruler in the kit's units has: rounded from the picture, not from other marks. Pocket and window stay. */
function atStep(kit: Kit, pattern: Pattern, markStep: number): Pattern {
  if (Math.abs(markStep - kit.fit.markStep) < 1e-6) return pattern;
  const fit = { ...kit.fit, markStep, head: pattern.fit.head };
  const { pocket, window } = pattern;
  return { ...patternAt({ ...kit, light: undefined, insert: undefined, fit }), pocket, window };
}

export function costText(kit: Kit, supplies: readonly Supply[]): string {
  const cost = costOf(supplies);
  return cost === undefined ? "" : money(cost, kit.currency);
}

function tackView(kit: Kit, pattern: Pattern): TackView {
  const { glued, held } = tackList(pattern);
  return {
    rows: glued.map((tack) => ({
      number: tack.leaf.leaf,
      leaf: leafAndPage(tack.leaf),
      place: stretch(tack.from, tack.to, styleFor(kit.units, kit.fit.markStep)),
    })),
    held,
  };
}

/** `46.5–62 mm` from the head. */
function stretch(from: number, to: number, style: LengthStyle): string {
  return `${formatNumber(from, style)}–${formatLength(to, style)}`;
}
