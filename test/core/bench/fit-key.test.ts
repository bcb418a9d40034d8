import { describe, expect, it } from "vitest";
import { CUT_WAY } from "../../../src/core/bench/cut-way.ts";
import { type Desk, deskAddress, deskStyle, moveDesk, openDesk } from "../../../src/core/bench/desk.ts";
import { benchKit, fitOf, refitNow } from "../../../src/core/bench/fit-key.ts";
import { bringBack, loseLeaf } from "../../../src/core/bench/lost-leaves.ts";
import { measureBatch, showLeaf, tickUntimed } from "../../../src/core/bench/progress.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { withHeight } from "../../../src/core/fit/shape.ts";
import { fromAddress } from "../../../src/core/refit/address.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { madeKit } from "../kit/made-kit.ts";
import { patternOf } from "../pattern/computed.ts";
import { begin } from "./made.ts";

const kit = madeKit();
const read = (address: string) => fromAddress(new URLSearchParams(address), kit).refit;

const opened = (...given: Parameters<typeof openDesk>): Desk => valueFrom(openDesk(...given));
const moved = (...given: Parameters<typeof moveDesk>): Desk => valueFrom(moveDesk(...given));

describe("fitOf(refit)", () => {
  it("is one and the same for one book, however its address is written", () => {
    expect(fitOf(read("last=250&thick=14&leaves=128"))).toBe(fitOf(read("leaves=128&thick=14.0&last=250")));
    expect(fitOf(read(""))).toBe("");
  });

  it("does not follow what changes at the bench: units, lost leaves, bulk of the flaps", () => {
    expect(fitOf(read("leaves=128&units=in&lost=40_41&bulk=2.7"))).toBe(fitOf(read("leaves=128")));
    expect(fitOf(read("lost=40"))).toBe("");
  });

  it.each(["leaves=128", "thick=13", "height=180", "border=4_10", "read=rtl", "depths=10_21", "step=0.5"])(
    "is another for %s",
    (address) => {
      expect(fitOf(read(address))).not.toBe("");
    },
  );
});

describe("refitNow(kit, refit, progress)", () => {
  it("adds the lost leaves and the fitted bulk to what was asked for", () => {
    const lost = loseLeaf(loseLeaf(begin(), leafNumber(21), []), leafNumber(20), []);
    // The made kit's leaf is 0.15 mm thick: 20 leaves of 7 mm are 2.333 times as thick as flat ones.
    const now = refitNow(kit, read("border=4_6"), measureBatch(lost, { leaves: 20, thickness: 7 }));
    expect(now).toEqual({ borderLeaves: [4, 6], lostLeaves: [20, 21], flapBulk: 1.333 });
    expect(refitNow(kit, read("border=4_6"), begin())).toEqual({ borderLeaves: [4, 6] });
  });

  it("measures with the reader's leaf, not with the author's", () => {
    const now = refitNow(kit, read("thick=12"), measureBatch(begin(), { leaves: 20, thickness: 14 }));
    expect(now.flapBulk).toBe(1.333);
  });

  it("tells a kit that leaves a leaf out itself when it is taken back in", () => {
    const author = { ...kit, fit: { ...kit.fit, lostLeaves: [leafNumber(20)] } };
    expect(refitNow(author, {}, begin())).toEqual({ lostLeaves: [] });
  });
});

describe("a desk", () => {
  it("begins at the first leaf that is folded", () => {
    const { progress } = opened(kit, read("border=4_6"), { units: "mm", way: CUT_WAY });
    expect(progress).toMatchObject({ kit: "made", fit: "border=4_6", at: 1, ticks: [], lost: [] });
    expect(opened(kit, read("border=0_6&lost=1"), { units: "mm", way: CUT_WAY }).progress.at).toBe(2);
  });

  it("begins with the first work of all, and goes on where kept progress is", () => {
    const { progress } = opened(kit, {}, { units: "mm", way: CUT_WAY });
    expect(progress).toMatchObject({ at: 1, item: "step check" });
    expect(opened(kit, {}, { units: "mm", way: CUT_WAY }, showLeaf(progress, leafNumber(7))).progress).toMatchObject({
      at: 7,
      item: undefined,
    });
    expect(
      opened(kit, {}, { units: "mm", way: CUT_WAY }, { ...progress, item: "step nothing" }).progress.item,
    ).toBeUndefined();
  });

  it("moves to a leaf that is folded", () => {
    const desk = opened(kit, read("lost=20"), { units: "mm", way: CUT_WAY });
    expect(moved(desk, showLeaf(desk.progress, leafNumber(20))).progress.at).toBe(21);
    expect(moved(desk, showLeaf(desk.progress, leafNumber(999))).progress.at).toBe(40);
  });

  it("cannot be where the kit does not fit the book", () => {
    expect(failureIn(openDesk(kit, read("width=30"), { units: "mm", way: CUT_WAY }))).toMatchObject({
      kind: "flap-in-gutter",
    });
  });

  it("says why a leaf cannot be left out", () => {
    const { progress, ...desk } = opened(kit, {}, { units: "mm", way: CUT_WAY });
    const lost = moveDesk({ ...desk, progress }, loseLeaf(progress, leafNumber(2), []));
    expect(failureIn(lost)).toMatchObject({ kind: "lost-leaf-outside", leaf: 2, first: 5, last: 36 });
  });

  // The kit's marks are whole millimetres; in inches sixteenths are nearest.
  it("writes marks in its units, at the step of a ruler", () => {
    expect(deskStyle(opened(kit, {}, { units: "mm", way: CUT_WAY }))).toEqual({ units: "mm", step: 1 });
    expect(deskStyle(opened(kit, {}, { units: "in", way: CUT_WAY }))).toEqual({ units: "in", step: 25.4 / 16 });
  });

  it("has an address that brings the same pattern to the kit's page", () => {
    const desk = opened(kit, read("border=4_6"), { units: "mm", way: CUT_WAY });
    const later = moved(desk, measureBatch(loseLeaf(desk.progress, leafNumber(20), []), { leaves: 20, thickness: 7 }));
    const page = patternOf(benchKit(kit, read(deskAddress(later)), "mm"));
    expect(later.plan.pattern).toEqual(page);
    expect(page.lostLeaves).toEqual([20]);
    const shown = patternOf(refitKit(kit, read(deskAddress(later)))).fit;
    expect(shown.restingOpening).toBeGreaterThan(desk.plan.pattern.fit.restingOpening);
  });

  it("begins without the leaves that its address leaves out, and follows kept progress instead of it", () => {
    const begun = opened(kit, read("lost=20"), { units: "mm", way: CUT_WAY });
    expect(begun.plan.pattern.lostLeaves).toEqual([20]);
    const back = moved(begun, bringBack(begun.progress, leafNumber(20), []));
    expect(back.plan.pattern.lostLeaves).toEqual([]);
    const again = opened(kit, read("lost=20"), { units: "mm", way: CUT_WAY }, back.progress);
    expect(again.plan.pattern.lostLeaves).toEqual([]);
    expect(again.changedSince).toBe(false);
  });

  it("keeps its plan while only ticks change, and knows when the kit was changed since", () => {
    const desk = opened(kit, {}, { units: "mm", way: CUT_WAY });
    expect(moved(desk, tickUntimed(desk.progress, [leafNumber(1)])).plan).toBe(desk.plan);
    const changed = { ...kit, fit: { ...kit.fit, shape: withHeight(kit.fit.shape, 42) } };
    expect(opened(changed, {}, { units: "mm", way: CUT_WAY }, desk.progress).changedSince).toBe(true);
    expect(opened(kit, {}, { units: "in", way: CUT_WAY }, desk.progress).changedSince).toBe(false);
  });
});
