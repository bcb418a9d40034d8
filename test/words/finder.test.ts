import { describe, expect, it } from "vitest";
import type { Known } from "../../src/core/finder/kit-list.ts";
import { finderSummary, missingFigures } from "../../src/words/finder.ts";
import { OFFER } from "../core/refit/made-offer.ts";

const KITS = ["buoy", "anchor", "barge", "crane", "dory"].map((slug) => ({ slug }));
const VERDICTS = new Map<string, Known>([
  ["buoy", { kind: "no", failure: { kind: "outline-hidden", level: 1 } }],
  ["anchor", { kind: "fits", minutes: 4 * 60, reasons: [] }],
  ["barge", { kind: "check", minutes: 5 * 60, reasons: [{ kind: "coarse", leaves: 20, column: 4 }] }],
  [
    "crane",
    {
      kind: "change",
      offers: [OFFER],
      minutes: 2 * 60,
    },
  ],
  ["dory", { kind: "unknown", cause: "not-loaded" }],
]);
const NONE = new Map<string, Known>();

describe("finderSummary(shown, all, verdicts), missingFigures(book)", () => {
  it("counts what fits, what fits with a change, and what does not", () => {
    expect(finderSummary(KITS, 5, VERDICTS)).toBe(
      "5 kits: 1 fits your book as it is, 1 fits, but has something to check first, 1 fits with a change, 1 does not fit, and 1 could not be checked.",
    );
  });

  it("counts what a filter leaves", () => {
    expect(finderSummary(KITS.slice(0, 1), 4, NONE)).toBe("1 of 4 kits.");
    expect(finderSummary([], 4, VERDICTS)).toBe("0 of 4 kits.");
    expect(finderSummary(KITS.slice(0, 1), 1, NONE)).toBe("1 kit.");
  });

  it.each([
    [{}, ""],
    [{ leafHeight: 1, leafWidth: 1, blockThickness: 1, leaves: 4 }, ""],
    [
      { leafHeight: 200, leafWidth: 130, blockThickness: 20 },
      "For leaves, each kit’s own book stands in until you enter yours.",
    ],
    [
      { leaves: 200 },
      "For leaf height, leaf width, and thickness, each kit’s own book stands in until you enter yours.",
    ],
  ])("%j: %s", (stated, words) => {
    expect(missingFigures(stated)).toBe(words);
  });
});
