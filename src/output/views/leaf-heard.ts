import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { notchMarks } from "../../core/light/notch-marks.ts";
import type { Pattern, PatternLeaf } from "../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../core/plan/bench.ts";
import type { LengthStyle } from "../../core/units/length.ts";
import { leafArguments } from "../../words/bench.ts";
import { heardLength } from "../../words/heard.ts";
import * as say from "../../words/messages.ts";

type CutPlan = BenchPlan<Pattern>;

/** A leaf as a voice says it, phrase by phrase: its page, its marks with their cuts, its folds, its notch. */
export function leafHeard(plan: CutPlan, leaf: LeafNumber, style: LengthStyle): string[] {
  const source = leafOf(plan, leaf);
  return [
    source.name.kind === "numbered"
      ? say.benchHeardPage({ page: source.name.recto })
      : say.benchSpokenLeaf(leafArguments(leaf, source.name)),
    ...(source.patternPage === null ? [say.benchHeardBorder()] : []),
    ...(source.cuts.length === 0 ? [wholeHeard(plan, source)] : marksHeard(plan, source, style)),
    ...notchHeard(plan, source, style),
  ];
}

/** One mark with its cut and the folds beside it; `mark` counts from 0 at the head. */
export function markHeard(plan: CutPlan, leaf: LeafNumber, mark: number, style: LengthStyle): string[] {
  const { cuts, spans } = leafOf(plan, leaf);
  const cut = cuts[mark]!;
  const above = spans.find(({ to }) => Math.abs(to - cut.at) < 1e-6)!;
  const below = spans[spans.indexOf(above) + 1]!;
  return [
    say.benchHeardMark({ mark: mark + 1, count: cuts.length, ...cutHeard(plan, cut, style) }),
    say.benchHeardBeside({ above: above.level, below: below.level }),
  ];
}

function leafOf({ pattern }: CutPlan, leaf: LeafNumber): PatternLeaf {
  return pattern.leaves.find((one) => one.leaf === leaf)!;
}

function wholeHeard({ pattern }: CutPlan, { spans }: PatternLeaf): string {
  const { level } = spans[0]!;
  return say.benchHeardWhole({ level, name: pattern.levels[level - 1]!.name });
}

function marksHeard(plan: CutPlan, { cuts, spans }: PatternLeaf, style: LengthStyle): string[] {
  return [
    say.benchHeardMarks({ count: cuts.length, units: style.units }),
    ...cuts.map((cut) => say.benchHeardCut(cutHeard(plan, cut, style))),
    say.benchHeardFolds({ folds: spans.map(({ level }) => level).join(", ") }),
  ];
}

function cutHeard({ pattern }: CutPlan, { at, depth }: PatternLeaf["cuts"][number], style: LengthStyle) {
  return { at: heardLength(at, style), cut: heardLength(benchCutDepth(pattern, depth), style) };
}

function notchHeard({ pattern }: CutPlan, { leaf }: PatternLeaf, style: LengthStyle): string[] {
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf);
  if (!notch) return [];
  const { from, to, depth } = notchMarks(notch, style.step);
  const heard = (mm: number): string => heardLength(mm, style);
  return [say.benchHeardNotch({ from: heard(from), to: heard(to), depth: heard(depth) })];
}
