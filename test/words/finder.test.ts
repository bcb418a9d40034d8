import { describe, expect, it } from "vitest";
import type { Verdict } from "../../src/core/finder/verdict.ts";
import { finderSummary, missingFigures } from "../../src/words/finder.ts";

const KITS = ["buoy", "anchor", "crane", "dory"].map((slug) => ({ slug }));
const VERDICTS = new Map<string, Verdict>([
  ["buoy", { kind: "no", why: "Too few leaves." }],
  ["anchor", { kind: "own", look: [], minutes: 4 * 60 }],
  ["crane", { kind: "change", offers: [{ words: "fold less", refit: {}, otherBook: false }], minutes: 2 * 60 }],
  ["dory", { kind: "unknown", why: "Not loaded." }],
]);
const NONE = new Map<string, Verdict>();

describe("finderSummary(shown, all, verdicts), missingFigures(book)", () => {
  it("counts what fits, what fits with a change, and what does not", () => {
    expect(finderSummary(KITS, 4, VERDICTS)).toBe(
      "4 kits: 1 fits your book as it is, 1 fits with a change, 1 does not fit, and 1 could not be checked.",
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
