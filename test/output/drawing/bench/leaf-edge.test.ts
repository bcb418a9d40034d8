import { DOMParser } from "@xmldom/xmldom";
import { describe, expect, it } from "vitest";
import type { BenchPlan } from "../../../../src/core/bench/bench-plan.ts";
import { leafNumber } from "../../../../src/core/book/leaf-number.ts";
import type { Pattern } from "../../../../src/core/pattern/pattern.ts";
import { leafEdge } from "../../../../src/output/drawing/bench/leaf-edge.ts";
import { leafCard } from "../../../../src/output/views/leaf-card.ts";
import { fixturePlan } from "../../../core/bench/fixture-plan.ts";

const ROOM = { width: 500, height: 640 };

interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The drawing's shapes by class, with their numbers. */
function draw(plan: BenchPlan<Pattern>, leaf: number, step = 0.5) {
  const units = plan.kit.units;
  const svg = leafEdge(leafCard(plan, leafNumber(leaf), { units, step }), plan.pattern, units, ROOM);
  const root = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement!;
  const all = [...root.getElementsByTagName("*")];
  const of = (name: string) => all.filter((one) => one.getAttribute("class") === name);
  const number = (one: (typeof all)[number], key: string) => Number(one.getAttribute(key));
  return {
    root,
    body: of("edge-body")[0]!
      .getAttribute("d")!
      .match(/-?[\d.]+/g)!
      .map(Number),
    flaps: of("edge-flap").map(
      (one): Box => ({
        x: number(one, "x"),
        y: number(one, "y"),
        width: number(one, "width"),
        height: number(one, "height"),
      }),
    ),
    notches: of("edge-notch").map((one) => ({
      y: number(one, "y"),
      width: number(one, "width"),
      height: number(one, "height"),
    })),
    cuts: of("edge-cut").map((one) => ({
      y: number(one, "y1"),
      length: Math.abs(number(one, "x1") - number(one, "x2")),
      x: number(one, "x1"),
    })),
    labels: of("edge-label").map((one) => ({
      y: number(one, "y"),
      size: number(one, "font-size"),
      words: one.textContent,
    })),
    levels: of("edge-level").map((one) => one.textContent),
  };
}

/** The drawing's figures are rounded to tenths of a pixel, less than a tenth of a millimetre and of any mark step. */
const DRAWN = 0.1;

/** Pixels for a millimetre, and where the head is: from the drawn body. */
function measure(plan: BenchPlan<Pattern>, body: readonly number[]) {
  const [edge, head, , tail] = body as [number, number, number, number];
  return { edge, head, scale: (tail - head) / plan.pattern.book.leafHeight };
}

function busiest(plan: BenchPlan<Pattern>): number {
  return plan.pattern.leaves.reduce((a, b) => (b.cuts.length > a.cuts.length ? b : a)).leaf;
}

describe.each(["little-gull", "evening-boat", "harbour-moon", "tide-and-lamp"])(
  "the edge of %s's busiest leaf",
  (slug) => {
    const plan = fixturePlan(slug);
    const leaf = busiest(plan);
    const source = plan.pattern.leaves.find((one) => one.leaf === leaf)!;
    const drawn = draw(plan, leaf, plan.pattern.fit.markStep);
    const { edge, head, scale } = measure(plan, drawn.body);
    // Stepped folds are measured from the edge that is folded first, single folds from the fore-edge.
    const origin = plan.pattern.fit.foldStyle === "stepped" ? plan.pattern.levels[0]!.depth : 0;

    it("is to scale: strips, folds and cuts lie where the pattern has them, in both directions alike", () => {
      expect(drawn.flaps).toHaveLength(source.spans.length);
      source.spans.forEach((span, i) => {
        const flap = drawn.flaps[i]!;
        expect(Math.abs((flap.y - head) / scale - span.from)).toBeLessThan(DRAWN);
        expect(Math.abs(flap.height / scale - (span.to - span.from))).toBeLessThan(DRAWN);
        expect(Math.abs(flap.width / scale - (plan.pattern.levels[span.level - 1]!.depth - origin))).toBeLessThan(
          DRAWN,
        );
      });
      source.cuts.forEach((cut, i) => {
        const line = drawn.cuts[i]!;
        expect(Math.abs((line.y - head) / scale - cut.at)).toBeLessThan(DRAWN);
        expect(Math.abs(line.length / scale - (cut.depth - origin))).toBeLessThan(DRAWN);
        expect(line.x).toBe(edge);
      });
    });

    it("has the fore-edge where it lies on the front of a leaf", () => {
      const inward = drawn.flaps.find((flap) => flap.width > 0)!;
      const isRight = plan.pattern.book.direction === "ltr";
      expect(isRight ? inward.x + inward.width : inward.x).toBeCloseTo(edge, 1);
    });

    it("writes each mark with its cut, apart from the others and inside the room", () => {
      expect(drawn.labels.map((label) => label.words)).toHaveLength(source.cuts.length);
      drawn.labels.forEach((label, i) => {
        expect(label.size).toBeGreaterThanOrEqual(13);
        if (i > 0) expect(label.y - drawn.labels[i - 1]!.y).toBeGreaterThanOrEqual(label.size * 0.999);
        expect(label.y).toBeGreaterThan(0);
        expect(label.y).toBeLessThan(ROOM.height);
      });
      expect(drawn.levels).toEqual(source.spans.map((span) => String(span.level)));
    });
  },
);

describe("leafEdge(card, pattern, units, room)", () => {
  it("shows the light's notch at its heights", () => {
    const plan = fixturePlan("harbour-moon");
    const notch = plan.pattern.pocket!.notches[20]!;
    const drawn = draw(plan, notch.leaf);
    const { head, scale } = measure(plan, drawn.body);
    expect(drawn.notches).toHaveLength(1);
    expect(Math.abs((drawn.notches[0]!.y - head) / scale - notch.from)).toBeLessThan(DRAWN);
    expect(Math.abs(drawn.notches[0]!.height / scale - (notch.to - notch.from))).toBeLessThan(DRAWN);
    expect(draw(plan, 13).notches).toEqual([]);
  });

  it("stands in the middle of the room where there is no mark to write", () => {
    const drawn = draw(fixturePlan("harbour-moon"), 1);
    const xs = drawn.body.filter((_, i) => i % 2 === 0);
    expect(drawn.labels).toEqual([]);
    // The numbers' disc stands before the leaf: both together are centred.
    expect(Math.abs((Math.min(...xs) + Math.max(...xs)) / 2 - ROOM.width / 2)).toBeLessThan(40);
  });

  it("tells the leaf in words, for those who do not see it", () => {
    const plan = fixturePlan("harbour-moon");
    const drawn = draw(plan, 96);
    const said = drawn.root.getAttribute("aria-label")!;
    expect(drawn.root.getAttribute("role")).toBe("img");
    for (const label of drawn.labels) expect(said).toContain(label.words!.replace("›", ", cut "));
  });
});
