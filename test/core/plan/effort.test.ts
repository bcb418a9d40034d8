import { describe, expect, it } from "vitest";
import { benchCutDepth } from "../../../src/core/plan/bench.ts";
import { type Counts, countsOf, difficultyOf, effortOf } from "../../../src/core/plan/effort.ts";
import { scoringPlan } from "../../../src/core/plan/scoring.ts";
import { tackList } from "../../../src/core/plan/tack-list.ts";
import { fixtureFrontMatter, readMadeKit } from "../../input/kit/kit-folders.ts";
import { randomKits } from "../../oracle/random-kits.ts";
import { published, publishedText } from "../pattern/published.ts";
import { KITS } from "./made.ts";

describe("countsOf(pattern)", () => {
  it.each(KITS)("%s: counts what the published pattern holds", (_, folder) => {
    const { leaves, fit } = published(folder);
    const counts = countsOf(folder.pattern);
    const cuts = leaves.map((leaf) => leaf.cuts.length).reduce((a, b) => a + b, 0);
    expect(counts).toMatchObject({ leaves: leaves.length, cuts, marks: cuts });
    expect(counts.checks).toBe(Math.floor((fit.lastLeaf - fit.firstLeaf + 1) / 10));
    let [folds, tacks] = [0, 0];
    for (const leaf of leaves) {
      const deeper = leaf.spans.filter((span) => span.level !== 1).length;
      const stepped = folder.pattern.fit.foldStyle === "stepped" && leaf.spans.length > 1;
      folds += stepped ? 1 + deeper : leaf.spans.length;
      tacks += leaf.tacks.filter((tack) => tack.to - tack.from >= folder.pattern.fit.leastTab - 1e-4).length;
    }
    expect(counts.folds).toBe(folds);
    expect(counts.tacks).toBe(tacks);
    expect(counts.scores).toBe(scoringPlan(folder.pattern).reduce((sum, row) => sum + row.leaves, 0));
  });
});

describe("effortOf(counts, rates)", () => {
  const counts: Counts = {
    leaves: 10,
    scores: 20,
    marks: 30,
    cuts: 40,
    folds: 50,
    checks: 6,
    tacks: 70,
    notches: 8,
    parts: 9,
  };
  const rates = { leaf: 6, score: 3, mark: 4, cut: 6, fold: 12, check: 10, tack: 6, notch: 30, part: 120 };

  it("is count times seconds for each stage, in minutes, and their sum", () => {
    const { byStage, minutes } = effortOf(counts, rates);
    expect(byStage).toEqual({ turn: 1, score: 1, mark: 2, cut: 4, fold: 10, check: 1, tack: 7, notch: 4, part: 18 });
    expect(minutes).toBe(48);
  });

  it("follows the kit's own rates", () => {
    const { frontMatter, svg } = randomKits()[4]!;
    const slow = { leaf: 0, score: 0, mark: 0, cut: 60, fold: 0, check: 0, tack: 0, notch: 0, part: 0 };
    const folder = readMadeKit({ ...frontMatter, rates: slow }, svg);
    const { time } = JSON.parse(publishedText(folder));
    const cuts = published(folder).leaves.map((leaf) => leaf.cuts.length);
    expect(time.minutes).toBe(cuts.reduce((a, b) => a + b, 0));
    expect(time.byStage.cut).toBe(time.minutes);
    expect(time.byStage.fold).toBe(0);
  });
});

describe("tackList(pattern)", () => {
  it.each(KITS)("%s: glues what is as long as the least tab, and counts the rest", (_, folder) => {
    const { glued, held } = tackList(folder.pattern);
    const all = published(folder).leaves.flatMap((leaf) => leaf.tacks.map((tack) => ({ leaf: leaf.leaf, ...tack })));
    expect(glued.length + held).toBe(all.length);
    for (const tack of glued) expect(tack.to - tack.from).toBeGreaterThanOrEqual(folder.pattern.fit.leastTab - 1e-4);
  });
});

describe("benchCutDepth(pattern, depth)", () => {
  it("measures from the folded front edge when the leaf is folded first", () => {
    const stepped = KITS.find(([name]) => name === "harbour-moon")![1].pattern;
    const front = fixtureFrontMatter("harbour-moon").gauge.lines[1];
    for (const leaf of stepped.leaves) {
      for (const cut of leaf.cuts) expect(benchCutDepth(stepped, cut.depth)).toBe(cut.depth - front);
    }
  });

  it("measures from the fore-edge when each span is folded once", () => {
    const single = KITS.find(([name]) => name === "little-gull")![1].pattern;
    expect(benchCutDepth(single, 24)).toBe(24);
  });
});

describe("difficultyOf(pattern, effort)", () => {
  it("calls two levels, few cuts and an evening easy, and many hours demanding", () => {
    const { pattern } = KITS.find(([name]) => name === "little-gull")![1];
    expect(pattern.levels).toHaveLength(2);
    const byStage = effortOf(countsOf(pattern), KITS[0]![1].kit.rates).byStage;
    expect(difficultyOf(pattern, { minutes: 240, byStage })).toBe("easy");
    expect(difficultyOf(pattern, { minutes: 400, byStage })).toBe("moderate");
    expect(difficultyOf(pattern, { minutes: 800, byStage })).toBe("demanding");
  });
});
