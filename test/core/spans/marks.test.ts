import { describe, expect, it } from "vitest";
import { type MarkedLeaf, type MarkRules, markerOf } from "../../../src/core/spans/marks.ts";
import type { Span } from "../../../src/core/spans/span.ts";
import { fc } from "../../seed.ts";
import { exactLeaf } from "./exact-leaf.ts";

const RULES: MarkRules = { step: 0.5, leastTab: 3, depths: [10, 20, 40] };

/** Spans from the head: each to a height at a level. */
function spansTo(...ends: [to: number, level: number][]): Span[] {
  let from = 0;
  return ends.map(([to, level]) => {
    const span = { from, to, level };
    from = to;
    return span;
  });
}

/** One leaf, marked by itself. */
const markLeaf = (exact: readonly Span[], rules: MarkRules): MarkedLeaf => markerOf(rules)(exactLeaf(exact));

const marked = (exact: Span[], rules: Partial<MarkRules> = {}) => markLeaf(exact, { ...RULES, ...rules });

describe("markerOf(rules)(exact): rounding", () => {
  it.each([
    [0.5, 46.74, 46.5],
    [0.5, 46.76, 47],
    [0.5, 46.75, 47],
    [0.5, 46.25, 46.5],
    [1, 46.5, 47],
    [1, 46.49, 46],
    [25.4 / 32, 46.5, 46.83125],
    [25.4 / 16, 46.5, 46.0375],
  ])("step %d: a boundary at %d is marked at %d", (step, at, mark) => {
    // 46.5 mm is 58.58 thirty-seconds and 29.29 sixteenths of an inch; a half goes up.
    expect(marked(spansTo([at, 2], [200, 1]), { step }).spans).toEqual(spansTo([mark, 2], [200, 1]));
  });

  it("leaves head and tail where they are, whatever the step", () => {
    const { spans } = marked(spansTo([50.3, 2], [216.3, 1]), { step: 1 });
    expect(spans).toEqual(spansTo([50, 2], [216.3, 1]));
  });

  it("never marks beyond the tail", () => {
    const { spans, merged } = marked(spansTo([216.26, 2], [216.3, 1]), { step: 0.5 });
    expect(spans).toEqual(spansTo([216.3, 2]));
    expect(merged).toEqual([{ from: 216.26, to: 216.3, level: 1, into: 2 }]);
  });

  it("joins neighbours of one level before anything else", () => {
    expect(marked(spansTo([50, 2], [51, 1], [52, 1], [53, 1], [216, 2])).spans).toEqual(
      spansTo([50, 2], [53, 1], [216, 2]),
    );
  });
});

describe("markerOf(rules)(exact): absorption", () => {
  it("keeps a span of exactly the least tab, as marked", () => {
    expect(marked(spansTo([50.2, 2], [53.1, 1], [216, 2])).merged).toEqual([]);
    expect(marked(spansTo([50.2, 2], [53.1, 1], [216, 2])).spans).toEqual(spansTo([50, 2], [53, 1], [216, 2]));
  });

  it("gives a shorter one to its neighbours and lists it as drawn", () => {
    const { spans, merged } = marked(spansTo([50.3, 2], [53.1, 1], [216, 2]));
    expect(spans).toEqual(spansTo([216, 2]));
    expect(merged).toEqual([{ from: 50.3, to: 53.1, level: 1, into: 2 }]);
  });

  it("gives it to the neighbour whose depth is nearest, however short", () => {
    expect(marked(spansTo([100, 3], [102, 2], [110, 1])).spans).toEqual(spansTo([100, 3], [110, 1]));
    expect(marked(spansTo([100, 1], [102, 2], [110, 3]), { depths: [10, 30, 40] }).spans).toEqual(
      spansTo([100, 1], [110, 3]),
    );
  });

  it("knows depths that differ by less than a millimetre, whatever lies before the neighbours", () => {
    const depths = [20, 30, 40.5];
    expect(marked(spansTo([60, 3], [62, 2], [100, 1]), { depths }).spans).toEqual(spansTo([60, 3], [100, 1]));
    expect(marked(spansTo([60, 1], [62, 2], [100, 3]), { depths }).spans).toEqual(spansTo([62, 1], [100, 3]));
    const alike = [10, 20, 30];
    expect(marked(spansTo([50, 2], [60, 1], [62, 2], [82, 3], [100, 2]), { depths: alike }).spans).toEqual(
      spansTo([50, 2], [60, 1], [82, 3], [100, 2]),
    );
    expect(marked(spansTo([50, 2], [70, 1], [72, 2], [82, 3], [100, 2]), { depths: alike }).spans).toEqual(
      spansTo([50, 2], [72, 1], [82, 3], [100, 2]),
    );
  });

  it("gives it to the longer neighbour where depths are equally near, else toward the head", () => {
    const depths = [10, 20, 30];
    expect(marked(spansTo([60, 1], [62, 2], [100, 3]), { depths }).spans).toEqual(spansTo([62, 1], [100, 3]));
    expect(marked(spansTo([40, 1], [42, 2], [100, 3]), { depths }).spans).toEqual(spansTo([40, 1], [100, 3]));
    expect(marked(spansTo([50, 1], [52, 2], [102, 3]), { depths }).spans).toEqual(spansTo([52, 1], [102, 3]));
  });

  it("takes the shortest first, and nearest the head among equals", () => {
    // 1 mm at 50 goes first and makes 47 … 51 long enough; then 2 mm at 100.
    const exact = spansTo([48, 1], [50, 2], [51, 3], [100, 2], [102, 1], [216, 2]);
    const { spans, merged } = marked(exact);
    expect(merged.map(({ from, to }) => [from, to])).toEqual([
      [50, 51],
      [100, 102],
    ]);
    expect(spans).toEqual(spansTo([48, 1], [216, 2]));
    const equal = marked(spansTo([50, 1], [52, 2], [100, 1], [102, 2], [216, 1]));
    expect(equal.merged.map(({ from }) => from)).toEqual([50, 100]);
  });

  it("goes on until every span is long enough: a joined span that is still short is merged in turn", () => {
    // 3 (1 mm) goes to 2, its nearest; with 2 it is 2.5 mm, and that goes to 1.
    const { spans, merged } = marked(spansTo([50, 1], [51.5, 2], [52.5, 3], [216, 1]));
    expect(merged).toEqual([
      { from: 51.5, to: 52.5, level: 3, into: 2 },
      { from: 50, to: 52.5, level: 2, into: 1 },
    ]);
    expect(spans).toEqual(spansTo([216, 1]));
  });

  it("absorbs short spans at head and tail into their only neighbour", () => {
    expect(marked(spansTo([2, 1], [214, 3], [216, 2])).spans).toEqual(spansTo([216, 3]));
  });

  it("leaves a leaf of one span alone, even one shorter than the least tab", () => {
    expect(marked(spansTo([2, 1]))).toEqual({ spans: spansTo([2, 1]), merged: [] });
  });

  it("lists a span that rounding closes up", () => {
    const { spans, merged } = marked(spansTo([50.3, 2], [50.6, 1], [216, 2]), { leastTab: 0.5 });
    expect(spans).toEqual(spansTo([216, 2]));
    expect(merged).toEqual([{ from: 50.3, to: 50.6, level: 1, into: 2 }]);
  });

  it("lists a span that rounding closes up even when no tab is too short", () => {
    const { spans, merged } = marked(spansTo([50.3, 2], [50.6, 1], [216, 2]), { leastTab: 0 });
    expect(spans).toEqual(spansTo([216, 2]));
    expect(merged).toEqual([{ from: 50.3, to: 50.6, level: 1, into: 2 }]);
  });

  it("takes depths as equally near whatever the binary dust in them", () => {
    // 20.1 − 10 and 30.2 − 20.1 are both 10.1.
    const depths = [10, 20.1, 30.2];
    expect(marked(spansTo([60, 1], [62, 2], [100, 3]), { depths }).spans).toEqual(spansTo([62, 1], [100, 3]));
    expect(marked(spansTo([60, 3], [62, 2], [100, 1]), { depths }).spans).toEqual(spansTo([62, 3], [100, 1]));
  });

  it("takes lengths as equal whatever the binary dust in them", () => {
    // 1 mm on either side of 7.3 … 7.8, in steps of 0.1 mm: 8.8 − 7.8 is more than 7.3 − 6.3 only in its last bit.
    const rules = { step: 0.1, leastTab: 1, depths: [10, 20, 30] };
    expect(marked(spansTo([6.3, 2], [7.3, 1], [7.8, 2], [8.8, 3], [20, 2]), rules).spans).toEqual(
      spansTo([6.3, 2], [7.8, 1], [8.8, 3], [20, 2]),
    );
  });
});

const leaves = fc.record({
  lengths: fc.array(fc.tuple(fc.double({ min: 0.01, max: 30, noNaN: true }), fc.integer({ min: 1, max: 4 })), {
    minLength: 1,
    maxLength: 14,
  }),
  step: fc.constantFrom(0.5, 1, 25.4 / 32, 25.4 / 16),
  leastTab: fc.constantFrom(0, 1, 3, 5),
});

describe("markerOf(rules)(exact): properties", () => {
  const all = (property: (exact: Span[], rules: MarkRules) => void) =>
    fc.assert(
      fc.property(leaves, ({ lengths, step, leastTab }) => {
        let end = 0;
        const exact = spansTo(
          ...lengths.map(([length, level]): [number, number] => {
            end += length;
            return [end, level];
          }),
        );
        property(exact, { step, leastTab, depths: [10, 18, 27, 42] });
      }),
      { numRuns: 500 },
    );

  it("spans are gapless from head to tail, and no two neighbours have one level", () => {
    all((exact, rules) => {
      const { spans } = markLeaf(exact, rules);
      expect(spans[0]!.from).toBe(0);
      expect(spans.at(-1)!.to).toBe(exact.at(-1)!.to);
      spans.slice(1).forEach((span, i) => {
        expect(span.from).toBe(spans[i]!.to);
        expect(span.level).not.toBe(spans[i]!.level);
      });
    });
  });

  it("every mark is a multiple of the step, and within half a step of a boundary of the picture", () => {
    all((exact, rules) => {
      for (const { from } of markLeaf(exact, rules).spans.slice(1)) {
        expect(Math.abs(from / rules.step - Math.round(from / rules.step))).toBeLessThan(1e-4);
        const off = Math.min(...exact.slice(1).map((span) => Math.abs(span.from - from)));
        expect(off).toBeLessThanOrEqual(rules.step / 2 + 1e-5);
      }
    });
  });

  it("no span is shorter than the least tab, or without length", () => {
    all((exact, rules) => {
      const { spans } = markLeaf(exact, rules);
      if (spans.length < 2) return;
      for (const span of spans) {
        expect(span.to - span.from).toBeGreaterThanOrEqual(rules.leastTab - 1e-5);
        expect(span.to - span.from).toBeGreaterThan(0.001);
      }
    });
  });

  it("a span of the picture either has a span of its level where it was drawn or is listed", () => {
    all((exact, rules) => {
      const { spans, merged } = markLeaf(exact, rules);
      for (const { from, to, level } of exact) {
        const covers = (other: { from: number; to: number }) =>
          other.from <= to + rules.step && other.to >= from - rules.step;
        const kept = spans.some((span) => span.level === level && covers(span));
        const listed = merged.some((span) => covers(span));
        expect(kept || listed).toBe(true);
      }
    });
  });

  it("whatever stands at another level than drawn, beyond half a step of a boundary, is listed", () => {
    all((exact, rules) => {
      const { spans, merged } = markLeaf(exact, rules);
      const end = exact.at(-1)!.to;
      for (let u = 0.05; u < end; u += 0.37) {
        const at = (list: readonly Span[]) => list.find((span) => span.from <= u && u < span.to)!.level;
        if (at(exact) === at(spans)) continue;
        const rounded = exact.some((span) => Math.abs(span.from - u) <= rules.step / 2 + 1e-6);
        const listed = merged.some((span) => span.from - rules.step / 2 <= u && u <= span.to + rules.step / 2);
        expect(rounded || listed).toBe(true);
      }
    });
  });
});

/** Of spans in which no two neighbours have one level: the first of the shortest that is too short, merged, until there is none. */
function plainMarks(exact: readonly Span[], { step, leastTab, depths }: MarkRules) {
  const end = exact.at(-1)!.to;
  const onStep = (at: number): number => Math.round(Math.round(at / step + 1e-9) * step * 1e5) / 1e5;
  const mark = (at: number): number => (at === end ? at : Math.min(onStep(at), end));
  const spans = exact.map((span) => ({ from: mark(span.from), to: mark(span.to), level: span.level, drawn: span }));
  const merged = [];
  const length = (i: number): number => (spans[i] ? spans[i].to - spans[i].from : Number.NaN);
  while (spans.length > 1) {
    const least = Math.min(...spans.map((_, i) => length(i)));
    if (least >= leastTab - 1e-6 && least >= 1e-6) break;
    const i = spans.findIndex((_, one) => length(one) < least + 1e-6);
    const [before, own, after] = [spans[i - 1], spans[i]!, spans[i + 1]];
    const change = (other: typeof own | undefined): number =>
      other ? Math.abs(depths[other.level - 1]! - depths[own.level - 1]!) : Number.POSITIVE_INFINITY;
    const nearer = change(after) - change(before);
    const isAfter = Math.abs(nearer) > 1e-6 ? nearer < 0 : length(i + 1) > length(i - 1) + 1e-6;
    const into = (isAfter ? after : before)!;
    merged.push({ ...own.drawn, level: own.level, into: into.level });
    own.level = into.level;
    for (const first of [i, i - 1]) {
      const [one, next] = [spans[first], spans[first + 1]];
      if (!one || !next || one.level !== next.level) continue;
      spans.splice(first, 2, { ...one, to: next.to, drawn: { ...one.drawn, to: next.drawn.to } });
    }
  }
  return { spans: spans.map(({ from, to, level }) => ({ from, to, level })), merged };
}

describe("markerOf(rules)(exact) of any leaf", () => {
  const anyLeaf = fc.record({
    steps: fc.array(
      fc.tuple(
        fc.oneof(
          fc.integer({ min: 1, max: 12 }).map((n) => n / 4),
          fc.double({ min: 0.05, max: 9, noNaN: true }),
        ),
        fc.integer({ min: 1, max: 4 }),
      ),
      { minLength: 1, maxLength: 60 },
    ),
    step: fc.constantFrom(0.1, 0.5, 1, 25.4 / 32, 25.4 / 16, 1 / 3),
    leastTab: fc.constantFrom(0, 1, 3, 5, 12),
    depths: fc.constantFrom([10, 18, 27, 42], [10, 20, 30, 40]),
  });

  it("merges one span after the other, as a plain way does", () => {
    fc.assert(
      fc.property(anyLeaf, ({ steps, step, leastTab, depths }) => {
        let end = 0;
        const own = steps.filter(([, level], i) => level !== steps[i - 1]?.[1]);
        const exact = spansTo(
          ...own.map(([length, level]): [number, number] => {
            end += length;
            return [end, level];
          }),
        );
        const { spans, merged } = markLeaf(exact, { step, leastTab, depths });
        const plain = plainMarks(exact, { step, leastTab, depths });
        expect(spans).toEqual(plain.spans);
        expect(merged.map(({ level, into }) => [level, into])).toEqual(
          plain.merged.map(({ level, into }) => [level, into]),
        );
        for (const [i, { from, to }] of merged.entries()) {
          expect(from).toBeCloseTo(plain.merged[i]!.from, 2);
          expect(to).toBeCloseTo(plain.merged[i]!.to, 2);
        }
      }),
      { numRuns: 1000 },
    );
  });
});

describe("markerOf(rules) for leaf after leaf", () => {
  it("marks each as if it were the first", () => {
    const mark = markerOf(RULES);
    const long = Array.from({ length: 200 }, (_, i): Span => ({ from: i, to: i + 1, level: 1 + (i % 3) }));
    for (const leaf of [spansTo([50.3, 2], [53.1, 1], [216, 2]), long, spansTo([216, 1]), long.slice(0, 70)])
      expect(mark(exactLeaf(leaf))).toEqual(markLeaf(leaf, RULES));
  });
});
