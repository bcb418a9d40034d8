import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { scoringPlan } from "../../../src/core/plan/scoring.ts";
import { published } from "../pattern/published.ts";
import { KITS } from "./made.ts";

/** Levels whose line a leaf needs, told from the published spans. */
function needed(levels: readonly number[], foldStyle: string): Set<number> {
  const lines = new Set(levels);
  // Stepped: a leaf of several levels is folded at the front line first; a leaf of one level at its own line only.
  if (foldStyle === "stepped" && lines.size > 1) lines.add(1);
  return lines;
}

describe("scoringPlan(pattern)", () => {
  it.each(KITS)("%s: scores every line that a leaf needs", (_, folder) => {
    const plan = scoringPlan(folder.pattern);
    const { leaves, fit } = published(folder);
    for (const leaf of leaves) {
      for (const level of needed(
        leaf.spans.map((span) => span.level),
        (fit as unknown as { foldStyle: string }).foldStyle,
      )) {
        const { runs } = plan.find((row) => row.level === level)!;
        expect(runs.some((run) => run.first <= leaf.leaf && leaf.leaf <= run.last)).toBe(true);
      }
    }
  });

  it.each(KITS)("%s: scores nothing over more than four leaves that do not need it", (_, folder) => {
    const { leaves, fit } = published(folder);
    const style = (fit as unknown as { foldStyle: string }).foldStyle;
    for (const { level, runs } of scoringPlan(folder.pattern)) {
      const needs = (n: number): boolean => {
        const leaf = leaves.find((one) => one.leaf === n);
        return (
          leaf !== undefined &&
          needed(
            leaf.spans.map((span) => span.level),
            style,
          ).has(level)
        );
      };
      for (const { first, last } of runs) {
        expect([needs(first), needs(last)]).toEqual([true, true]);
        let idle = 0;
        for (let n = first; n <= last; n = leafNumber(n + 1)) {
          idle = needs(n) ? 0 : idle + 1;
          expect(idle).toBeLessThanOrEqual(4);
        }
      }
      runs.slice(1).forEach((run, i) => {
        expect(run.first - runs[i]!.last).toBeGreaterThan(5);
      });
    }
  });

  it.each(KITS)("%s: counts the leaves of its runs, and border leaves need the background alone", (_, folder) => {
    const plan = scoringPlan(folder.pattern);
    expect(plan.map((row) => row.level)).toEqual(folder.pattern.levels.map((_level, i) => i + 1));
    for (const row of plan) {
      expect(row.leaves).toBe(row.runs.map((run) => run.last - run.first + 1).reduce((a, b) => a + b, 0));
    }
    const [before] = folder.kit.fit.borderLeaves;
    const background = folder.pattern.levels.findIndex((level) => level.background) + 1;
    for (const row of plan) {
      if (row.level === background) continue;
      expect(Math.min(...row.runs.map((run) => run.first))).toBeGreaterThan(before);
    }
  });
});
