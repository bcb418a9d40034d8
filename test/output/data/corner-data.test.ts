import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { cornerCounts } from "../../../src/core/plan/corner-effort.ts";
import { cornerCsv } from "../../../src/output/data/pattern-csv.ts";
import type { KitChanges } from "../../core/kit/made-kit.ts";
import { publishedCorners } from "../../core/pattern/published.ts";
import { cornerKit, cornerPattern } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";

const number = { type: "number", minimum: 0 };
const point = { type: "object", required: ["at", "depth"], properties: { at: number, depth: number } };

/** What readers of a leaf may count on, as JSON Schema. */
const LEAF = {
  type: "object",
  required: ["leaf", "patternPage", "bookPage", "x", "spans", "creases", "cuts", "tacks"],
  properties: {
    x: { type: "array", items: { type: "number" }, minItems: 1, maxItems: 1 },
    spans: {
      type: "array",
      maxItems: 1,
      items: {
        type: "object",
        required: ["from", "to", "level"],
        properties: { from: number, to: number, level: { const: 1 } },
      },
    },
    creases: {
      type: "array",
      maxItems: 2,
      items: {
        type: "object",
        required: ["corner", "from", "to"],
        properties: { corner: { enum: ["head", "tail"] }, from: point, to: point },
      },
    },
    turn: { type: "object", required: ["which", "of"] },
    straight: number,
    cuts: { type: "array", maxItems: 0 },
    tacks: { type: "array", maxItems: 0 },
  },
};

const validate = new Ajv2020.default({ allErrors: true, strict: false }).compile(LEAF);

const WAYS: readonly KitChanges[] = [
  {},
  { fit: { corner: { levels: [1], empty: "middle", dropped: [] } }, book: { leafWidth: 75, direction: "rtl" } },
];

describe("cornerJson", () => {
  it.each(SILHOUETTES.flatMap((one) => WAYS.map((way) => [one.name, cornerKit(way, one)] as const)))(
    "%s: each leaf has a strip with its creases, or is folded as leaves that show nothing",
    (_, kit) => {
      const { leaves, fit, corner, ...more } = JSON.parse(publishedCorners(kit));
      expect(more).toMatchObject({ schema: "leaflight/pattern/2", unit: "mm", time: { drying: 0 } });
      expect("light" in more || "insert" in more).toBe(false);
      expect(fit.foldStyle).toBe("corner");
      for (const leaf of leaves) {
        expect(validate(leaf) ? [] : validate.errors).toEqual([]);
        const [span] = leaf.spans;
        const middle = corner.empty === "middle" && !span;
        expect("straight" in leaf).toBe(!span && !middle);
        // A crease ends at the leaf's edge unless the strip reaches it, and begins at the strip's mark.
        const marks = leaf.creases.map((crease: { from: { at: number } }) => crease.from.at);
        const height = kit.book.leafHeight;
        const wanted = span ? [span.from, span.to] : middle ? [height / 2, height / 2] : [];
        expect(marks).toEqual(wanted.filter((at: number) => at > 0 && at < height));
        for (const { corner: which, from, to } of leaf.creases) {
          expect([from.depth, to.at]).toEqual([0, which === "head" ? 0 : height]);
          expect(to.depth).toBeLessThanOrEqual(Math.abs(from.at - to.at));
        }
      }
    },
  );

  it("by hand: a leaf of the square", () => {
    const { leaves, corner } = JSON.parse(publishedCorners(cornerKit()));
    expect(leaves[59]).toEqual({
      leaf: 60,
      patternPage: 111,
      bookPage: 119,
      x: [leaves[59].x[0]],
      spans: [{ from: 68, to: 122, level: 1 }],
      creases: [
        { corner: "head", from: { at: 68, depth: 0 }, to: { at: 0, depth: 68 } },
        { corner: "tail", from: { at: 122, depth: 0 }, to: { at: 200, depth: 78 } },
      ],
      cuts: [],
      tacks: [],
    });
    expect(leaves[0]).toMatchObject({ patternPage: null, spans: [], straight: 20, creases: [] });
    expect(corner).toEqual({
      levels: [1],
      leftOut: [],
      empty: "line",
      emptyDepth: 20,
      turns: { leaves: 0, most: 1, every: 1, unseen: 0 },
      turned: 0,
    });
  });
});

describe("cornerCsv", () => {
  it("by hand: the same leaves as rows", () => {
    const rows = cornerCsv(cornerPattern(cornerKit())).split("\r\n");
    expect(rows[60]).toBe("60,111,119,,68-122:1,,head:68-68 tail:122-78,");
    expect(rows[1]!.split(",").slice(4)).toEqual(["", "", "", "20"]);
  });

  it("says whose turn it is", () => {
    const rows = cornerCsv(cornerPattern(cornerKit({}, SILHOUETTES[2]))).split("\r\n");
    const turns = new Set(rows.slice(1).map((row) => row.split(",")[5]));
    expect([...turns].filter((turn) => turn).sort()).toEqual(["1 of 2", "1 of 3", "2 of 2", "2 of 3", "3 of 3"]);
  });
});

describe("cornerCounts", () => {
  it("by hand: the square is on the leaves of three fifths of the width, each with two marks and two folds", () => {
    const pattern = cornerPattern(cornerKit());
    const shown = pattern.leaves.filter(({ fold }) => fold.kind === "corners").length;
    // 112 picture leaves of which every tenth is a checkpoint; 8 border leaves.
    expect(cornerCounts(pattern)).toEqual({
      leaves: 120,
      scores: 0,
      marks: 2 * shown,
      cuts: 0,
      folds: 2 * shown + (120 - shown),
      checks: 11,
      tacks: 0,
      notches: 0,
      parts: 0,
    });
    expect(shown).toBeGreaterThan(60);
    expect(shown).toBeLessThan(75);
  });

  it("has a second mark where a crease is steeper", () => {
    const pattern = cornerPattern(cornerKit({ book: { leafWidth: 75 } }));
    const shown = pattern.leaves.filter(({ fold }) => fold.kind === "corners").length;
    // Above are 68 mm, within 70; below are 78 mm.
    expect(cornerCounts(pattern).marks).toBe(3 * shown);
  });
});
