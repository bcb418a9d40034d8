import { describe, expect, it } from "vitest";
import { judge } from "../../../src/core/finder/verdict.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";
import { patternOf } from "../pattern/computed.ts";

const KIT = madeKit();

/** A kit whose work is a minute a folded leaf. */
const MINUTES = madeKit({
  rates: { leaf: 60, score: 0, mark: 0, cut: 0, fold: 0, check: 0, tack: 0, notch: 0, part: 0, first: 2 },
});

const thin = { leaves: 200, blockThickness: 6, lastPage: 400 };

describe("judge(kit, book)", () => {
  it.each<[string, Kit, Refit, string]>([
    ["fits its own book as it is", KIT, {}, "fits"],
    ["fits its own book with light and window", litKit(), {}, "fits"],
    // 0.03 mm a leaf: pages were counted as leaves.
    ["is to be checked in a book that may have been measured wrong", KIT, thin, "check"],
    ["needs a change on a leaf too narrow for its flaps", KIT, { leafWidth: 40 }, "change"],
    // By hand: less than 2 × 8 + 5, 40 % of the wall's depth.
    ["is not for a leaf on which no flap lies, however shallow", KIT, { leafWidth: 20 }, "no"],
    ["is not for figures that contradict each other", KIT, { leaves: 20, lastPage: 80 }, "no"],
    // Another book would do, but it is her book that is asked for.
    [
      "is not for a book of four leaves that needs eight for borders",
      madeKit({ fit: { borderLeaves: [1, 0], shape: { solve: "opening", pictureLeaves: 30, height: 40 } } }),
      { leaves: 4, blockThickness: 0.6, lastPage: 8 },
      "no",
    ],
  ])("%s", (_, kit, book, kind) => {
    expect(judge(kit, book).kind).toBe(kind);
  });

  it("gives the minutes of work in the reader's book", () => {
    expect(judge(MINUTES, {})).toEqual({ kind: "fits", reasons: [], minutes: 40 });
    expect(judge(MINUTES, { leaves: 44, blockThickness: 6.6, lastPage: 88 })).toEqual({
      kind: "fits",
      reasons: [],
      minutes: 44,
    });
    expect(judge(MINUTES, thin)).toMatchObject({ kind: "check", minutes: 200 });
  });

  it("gives the reasons that are to be looked at", () => {
    const verdict = judge(KIT, thin);
    expect(verdict.kind === "check" && verdict.reasons.map(({ kind }) => kind)).toEqual(["caliper"]);
  });

  it("offers only changes in the reader's own book with which the whole kit is made, and the first one's minutes", () => {
    // By hand: 2 × 17.5 and 5 mm are the leaf; folded once more, 2 × 20 − 10 and 5 lie on it. Another book is no change.
    const book = { leafWidth: 40 };
    const verdict = judge(MINUTES, book);
    expect(verdict).toMatchObject({ kind: "change", minutes: 40 });
    if (verdict.kind !== "change") return;
    expect(verdict.offers.map(({ refit }) => refit)).toEqual([
      { ...book, depths: [9, 17.5] },
      { ...book, foldStyle: "stepped" },
    ]);
    for (const { refit } of verdict.offers) patternOf(refitKit(MINUTES, refit));
  });

  it("offers no change with which the kit comes out poorly", () => {
    // In a book of 8 leaves, borders of 3 leave two for the picture.
    expect(judge(KIT, { leaves: 8, blockThickness: 1.2, lastPage: 16 }).kind).toBe("no");
  });

  it("gives the failure of the book as it is where nothing helps", () => {
    const verdict = judge(KIT, { leafWidth: 20 });
    expect(verdict).toMatchObject({ kind: "no", failure: { kind: "flap-in-gutter", level: 1, leafWidth: 20 } });
  });
});
