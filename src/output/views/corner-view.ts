import { lazily, once } from "../../core/lazily.ts";
import { cornerAt } from "../../core/pattern/compute-corner.ts";
import type { CornerPattern } from "../../core/pattern/corner-pattern.ts";
import type { PatternedKit } from "../../core/pattern/patterned-kit.ts";
import type { Caution } from "../../core/plan/caution.ts";
import { cornerCounts } from "../../core/plan/corner-effort.ts";
import { effortOf } from "../../core/plan/effort.ts";
import { cornerWork } from "../../core/steps/corner-work.ts";
import { cornerSupplies } from "../../core/supplies/corner-supplies.ts";
import { difficultyWord } from "../../words/difficulty.ts";
import { doubtText } from "../../words/findings/doubts.ts";
import { styleFor } from "../../words/lengths.ts";
import { cornerLeaf } from "../drawing/corner/corner-leaf.ts";
import { cornerLegend } from "../drawing/diagrams/line-legend.ts";
import { measureBook } from "../drawing/diagrams/measure-book.ts";
import { cautionsFor } from "./cautions.ts";
import { type CornerRow, cornerRow } from "./corner-row.ts";
import { cornerStepsOf } from "./corner-steps.ts";
import { figuresOf } from "./figures.ts";
import { costText, type KitViewBase, mergedViews } from "./kit-view.ts";
import { preparationOf } from "./preparation.ts";
import { supplyView } from "./supply-view.ts";

/** Everything that the page of a kit shows whose corners are folded. */
export interface CornerView extends KitViewBase {
  readonly way: "corner";
  readonly pattern: CornerPattern;
  /** The pattern with marks that a ruler in the kit's units has. */
  readonly shown: CornerPattern;
  /** The table's rows in the kit's own units. */
  readonly rows: readonly CornerRow[];
}

/** More work than this, in hours, is not easy any more. */
const EASY = 5;

/** Prepares a kit for its page that is folded by corners. Pure. */
export function viewCorner(
  { kit, pattern, findings, pictureNotes }: PatternedKit<CornerPattern>,
  cautions: readonly Caution[],
): CornerView {
  const style = styleFor(kit.units, kit.fit.markStep);
  const shown = Math.abs(style.step - kit.fit.markStep) < 1e-6 ? pattern : cornerAt(kit, style.step, pattern.fit.head);
  const counts = cornerCounts(shown);
  const effort = effortOf(counts, kit.rates);
  const work = once(() => cornerWork(kit, pattern));
  const supplies = once(() => cornerSupplies(kit, work()).map((supply) => supplyView(supply, kit.units)));
  return lazily<CornerView>({
    way: () => "corner",
    slug: () => kit.slug,
    kit: () => kit,
    pattern: () => pattern,
    shown: () => shown,
    work,
    counts: () => counts,
    effort: () => effort,
    difficulty: () => difficultyWord(effort.minutes / 60 <= EASY ? "easy" : "moderate"),
    figures: () => figuresOf(kit, pattern, { counts, effort, work: work() }),
    preparation: () => preparationOf(kit, pattern),
    rows: () => shown.leaves.map((leaf) => cornerRow(leaf, style)),
    steps: () => cornerStepsOf(kit, { pattern, shown }, work(), effort),
    legend: cornerLegend,
    measuring: () => measureBook(kit),
    reading: () => [cornerLeaf(kit, shown)],
    supplies,
    cautions: () => cautionsFor(cautions, work()),
    findings: () => findings,
    warnings: () => findings.map((doubt) => doubtText(doubt, kit)),
    notes: () => pictureNotes,
    merged: () => mergedViews(kit, pattern),
    cost: () => costText(kit, supplies()),
  });
}
