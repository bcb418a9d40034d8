import { describe, expect, it } from "vitest";
import { publishedText } from "../../core/pattern/published.ts";
import { FIXTURE_KITS, FIXTURES, fixtureFolder, fixtureFrontMatter, readKit } from "../../input/kit/kit-folders.ts";

interface Leaf {
  readonly patternPage: number | null;
  readonly spans: readonly { readonly level: number }[];
  readonly cuts: readonly unknown[];
  readonly tacks: readonly { readonly from: number; readonly to: number }[];
}

/** The rates that the reference states, seconds for one. */
const RATES = { leaf: 12, mark: 4, cut: 6, fold: 10, check: 20, tack: 15, notch: 25, part: 420 };

/** Counted from the published pattern alone, as anyone can who reads it. */
function totals(slug: string) {
  // biome-ignore lint/suspicious/noExplicitAny: the published JSON is read freely
  const pattern: any = JSON.parse(publishedText(readKit(fixtureFolder(slug), FIXTURES)));
  const leaves: readonly Leaf[] = pattern.leaves;
  const sum = (of: (leaf: Leaf) => number): number => leaves.reduce((total, leaf) => total + of(leaf), 0);
  const stepped = pattern.fit.foldStyle === "stepped";
  return {
    pattern,
    leaves: leaves.length,
    cuts: sum((leaf) => leaf.cuts.length),
    folds: sum(({ spans }) =>
      stepped && spans.length > 1 ? 1 + spans.filter(({ level }) => level > 1).length : spans.length,
    ),
    checks: Math.floor(leaves.filter(({ patternPage }) => patternPage !== null).length / 10),
    tacks: sum(({ tacks }) => tacks.filter(({ from, to }) => to - from >= pattern.fit.leastTab - 1e-6).length),
    notches: pattern.light?.notches.length ?? 0,
    parts: (pattern.insert?.parts ?? []).reduce((total: number, part: { count: number }) => total + part.count, 0),
    flat: (pattern.insert?.parts ?? []).filter((part: { spacers?: number }) => part.spacers === 0).length,
    quantity: (id: string): number | undefined =>
      pattern.supplies.find((supply: { id: string }) => supply.id === id)?.quantity,
  };
}

describe.each(FIXTURE_KITS)("totals of the published pattern of %s", (slug) => {
  const counted = totals(slug);
  const { pattern } = counted;

  it("state the minutes of its leaves by its rates", () => {
    const rates = { ...RATES, ...fixtureFrontMatter(slug).rates };
    const minutes = (count: number, seconds: number) => expect.closeTo((count * seconds) / 60, 1);
    expect(pattern.time.byStage).toMatchObject({
      turn: minutes(counted.leaves, rates.leaf),
      mark: minutes(counted.cuts, rates.mark),
      cut: minutes(counted.cuts, rates.cut),
      fold: minutes(counted.folds, rates.fold),
      check: minutes(counted.checks, rates.check),
      tack: minutes(counted.tacks, rates.tack),
      notch: minutes(counted.notches, rates.notch),
      part: minutes(counted.parts, rates.part),
    });
    const stages = Object.values(pattern.time.byStage as Record<string, number>);
    expect(Math.abs(pattern.time.minutes - stages.reduce((a, b) => a + b, 0))).toBeLessThan(0.5);
  });

  // A blade for every 250 cuts begun and one for a window; two dots for a button, three for a flat motif (common practice, no source).
  it("buy blades and glue dots for its cuts and tacks", () => {
    const window = pattern.insert ? 1 : 0;
    expect(counted.quantity("blades")).toBe(Math.ceil((counted.cuts + counted.notches) / 250) + window);
    expect(counted.quantity("glueDots") ?? 0).toBe(counted.tacks + 2 * window + 3 * counted.flat);
  });

  // Tape twice round the frame, a tenth for waste; to the next 0.1 m, or quarter of a foot.
  it("buy tape and string for its window", () => {
    const steps = fixtureFrontMatter(slug).units === "in" ? { length: 76.2, each: 4 } : { length: 100, each: 10 };
    const bought = (mm: number) => Math.ceil((mm * 1.1) / steps.length) / steps.each;
    const { frameLength, stringLength } = pattern.insert ?? {};
    expect(counted.quantity("tape")).toBe(pattern.insert ? bought(2 * frameLength) : undefined);
    expect(counted.quantity("string")).toBe(pattern.insert ? bought(stringLength) : undefined);
    expect(counted.quantity("button")).toBe(pattern.insert ? 1 : undefined);
  });

  it("list each tool once, a bone folder among them", () => {
    const tools = pattern.supplies.filter(({ kind }: { kind: string }) => kind === "tool");
    const ids = tools.map(({ id }: { id: string }) => id);
    const always = ["boneFolder", "ruler", "pencil", "awl", "scissors", "slips", "knife", "mat"];
    expect(ids).toEqual([...always, ...(pattern.insert ? ["weight"] : []), "packing"]);
    for (const { quantity } of tools) expect(quantity).toBe(1);
  });
});
