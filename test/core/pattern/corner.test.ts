import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Doubt } from "../../../src/core/findings/doubt.ts";
import type { Failure } from "../../../src/core/findings/failure.ts";
import { asCutKit, frontDepth } from "../../../src/core/kit/cut-kit.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { fitAny } from "../../../src/core/pattern/fit-any.ts";
import { fitKit } from "../../../src/core/pattern/fit-kit.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { cornerKit, cornerPattern } from "../../oracle/corner/corner-kit.ts";
import { SILHOUETTES } from "../../oracle/corner/silhouettes.ts";
import { LIGHT, litKit, madeKit, WELL, WINDOW } from "../kit/made-kit.ts";

function failureOf(kit: Kit): Failure {
  const result = fitAny(kit);
  if (result.fits) throw new Error("it fits");
  return result.finding;
}

function doubtsOf(kit: Kit): readonly Doubt[] {
  const result = fitAny(kit);
  if (!result.fits) throw new Error(`does not fit: ${result.finding.kind}`);
  return result.findings;
}

const kinds = (kit: Kit) => doubtsOf(kit).map(({ kind }) => kind);
const WELL_LEVELS = [10, 15, 35].map((depth, i) => ({ name: `${i}`, depth, line: undefined, background: i === 1 }));
const [DISC, RING, BARS] = SILHOUETTES;

describe("fitAny(kit)", () => {
  it("is what fitKit says of a kit that is cut, and without a cut one of another kind", () => {
    const kit = madeKit();
    expect(fitAny(kit)).toEqual(fitKit(asCutKit(kit)));
    expect(() => asCutKit(cornerKit())).toThrow(/folded only/);
    expect([frontDepth(kit), frontDepth(cornerKit())]).toEqual([10, 0]);
  });

  it("by hand: a square from 68 to 122 of 200 mm, on a leaf 130 mm wide", () => {
    // The picture begins at 50 and is 90 tall; its square is the middle three fifths.
    const { leaves, fit, corner } = cornerPattern(cornerKit());
    const middle = leaves[59]!;
    expect(middle).toMatchObject({ leaf: 60, patternPage: 2 * 55 + 1, bookPage: 119 });
    expect(middle.fold).toEqual({
      kind: "corners",
      shown: { from: 68, to: 122 },
      turn: null,
      creases: [
        { corner: "head", from: { at: 68, depth: 0 }, to: { at: 0, depth: 68 } },
        { corner: "tail", from: { at: 122, depth: 0 }, to: { at: 200, depth: 78 } },
      ],
    });
    expect(corner).toMatchObject({ levels: [1], leftOut: [], empty: "line", emptyDepth: 20, turned: 0, dropped: [] });
    expect(fit).toMatchObject({ firstLeaf: 5, lastLeaf: 116, height: 90, foldStyle: "corner" });
    expect(fit.width).toBeCloseTo(90, 9);
  });

  it("leaves out a lost leaf and lets the picture close over it", () => {
    const lost = cornerPattern(cornerKit({ fit: { lostLeaves: [leafNumber(60)] } }, BARS));
    expect(lost.leaves.map(({ leaf }) => leaf)).not.toContain(60);
    expect(lost.leaves).toHaveLength(119);
    expect(lost.corner.turns).toMatchObject({ most: 3, every: 3, unseen: 0 });
  });

  it.each([
    ["line", { kind: "straight", depth: 20 }],
    // 130 less 5 of clearance, halved.
    ["half", { kind: "straight", depth: 62.5 }],
    ["middle", { kind: "middle", at: 100 }],
  ] as const)("folds leaves that show nothing as it is asked: %s", (empty, fold) => {
    const { leaves, corner } = cornerPattern(cornerKit({ fit: { corner: { levels: [1], empty, dropped: [] } } }));
    expect(leaves[0]!.fold).toMatchObject(fold);
    expect(corner.emptyDepth).toBe(fold.kind === "straight" ? fold.depth : undefined);
  });

  it("merges what is too short, strips and gaps, and lists it", () => {
    // Two bars of 27 mm with a gap of 1.8 mm between them on leaves that are 90 mm for a picture of 100.
    const bars = {
      ...BARS!,
      rings: [
        [0, 30],
        [32, 62],
        [80, 82],
      ].map(([top, end]) => box(5, top!, 95, end!)),
    };
    const { leaves, merged, corner } = cornerPattern(cornerKit({}, bars));
    const shown = leaves.flatMap(({ fold }) => (fold.kind === "corners" ? [fold.shown] : []));
    expect(new Set(shown.map(({ from, to }) => `${from}-${to}`))).toEqual(new Set(["50-106"]));
    expect(corner.turns.leaves).toBe(0);
    expect(new Set(merged.map(({ level, into }) => `${level} into ${into}`))).toEqual(
      new Set(["2 into 1", "1 into 2"]),
    );
    expect(kinds(cornerKit({}, bars))).toContain("merged-spans");
  });
});

function box(left: number, top: number, right: number, bottom: number): [number, number][] {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

describe("what cannot be folded by corners", () => {
  const narrow = (leafWidth: number) =>
    cornerKit({
      book: { leafWidth },
      fit: { gutterClearance: 30, corner: { levels: [1], empty: "middle", dropped: [] } },
    });

  it.each<[string, Kit, Failure]>([
    ["a light", cornerKit({ light: LIGHT }), { kind: "needs-knife", part: "light" }],
    ["a window", cornerKit({ insert: WINDOW }), { kind: "needs-knife", part: "window" }],
    ["both", cornerKit({ light: LIGHT, insert: WINDOW }), { kind: "needs-knife", part: "light" }],
    [
      "the background",
      cornerKit({ fit: { corner: { levels: [1, 2], empty: "line", dropped: [] } } }),
      { kind: "background-shown", level: 2 },
    ],
    ["a leaf too narrow", narrow(39.9), { kind: "no-room-for-corners", leafWidth: 39.9, clearance: 30, least: 10 }],
    [
      "a picture too small",
      cornerKit({ fit: { shape: { solve: "nothing", pictureLeaves: "fill", height: 5, opening: 1 }, leastTab: 4 } }),
      { kind: "nothing-to-show", height: 5, leastTab: 4 },
    ],
    [
      "one picture leaf",
      cornerKit({ fit: { borderLeaves: [60, 59] } }),
      { kind: "too-few-leaves", before: 60, picture: 2, after: 59, leaves: 120, most: 1 },
    ],
  ])("%s", (_, kit, failure) => {
    expect(failureOf(kit)).toEqual(failure);
  });

  it("a border's straight fold in the gutter; levels that are not folded may be as deep as they like", () => {
    const levels = (front: number, back: number) =>
      [front, back].map((depth, i) => ({ name: `${i}`, depth, line: undefined, background: i === 1 }));
    expect(failureOf(cornerKit({ levels: levels(10, 63) }))).toMatchObject({
      kind: "flap-in-gutter",
      level: 2,
      reach: 126,
      deepest: 62.5,
      foldStyle: "corner",
    });
    expect(fitAny(cornerKit({ levels: levels(10, 62.5) })).fits).toBe(true);
    const half = cornerKit({ levels: levels(80, 90), fit: { corner: { levels: [1], empty: "half", dropped: [] } } });
    expect(fitAny(half).fits).toBe(true);
  });

  it("a leaf has room from 10 mm on", () => {
    expect(fitAny(narrow(40)).fits).toBe(true);
  });
});

describe("what may disappoint in folded corners", () => {
  it("is nothing of its own where one outline meets each leaf once", () => {
    expect(kinds(cornerKit({}, DISC))).not.toContain("turns");
    expect(kinds(cornerKit({}, DISC))).not.toContain("levels-left-out");
  });

  it("tells of levels that are not shown, unless they are joined", () => {
    const kit = (levels: number[]) =>
      cornerKit({ levels: WELL_LEVELS, picture: WELL, fit: { corner: { levels, empty: "line", dropped: [] } } });
    expect(doubtsOf(kit([1]))).toContainEqual({ kind: "levels-left-out", levels: [3] });
    expect(kinds(kit([1, 3]))).not.toContain("levels-left-out");
    // Joined, the well is a part of the outline, so no leaf meets it twice.
    expect(kinds(kit([1, 3]))).not.toContain("turns");
    expect(kinds(kit([1]))).toContain("turns");
  });

  it("tells of turns with their figures", () => {
    const pattern = cornerPattern(cornerKit({}, RING));
    const { leaves, most, every } = pattern.corner.turns;
    expect([most, every]).toEqual([2, 2]);
    expect(leaves).toBe(pattern.leaves.filter(({ fold }) => fold.kind === "corners" && fold.turn).length);
    expect(doubtsOf(cornerKit({}, RING))).toContainEqual({ kind: "turns", leaves, most, every });
  });

  it("tells of stripes where more than half of the leaves take turns", () => {
    const striped = (kit: Kit) => doubtsOf(kit).find(({ kind }) => kind === "striped");
    expect(striped(cornerKit({}, DISC))).toBeUndefined();
    const { corner, fit } = cornerPattern(cornerKit({}, BARS));
    const of = fit.lastLeaf - fit.firstLeaf + 1;
    expect(2 * corner.turns.leaves).toBeGreaterThan(of);
    expect(striped(cornerKit({}, BARS))).toEqual({ kind: "striped", leaves: corner.turns.leaves, of });
    // A ring is met twice only beside its hole: by half of its leaves, and that is told as turns alone.
    expect(striped(cornerKit({}, RING))).toBeUndefined();
  });

  it("tells of parts that no leaf has a turn for", () => {
    // Beside a bar stand two posts one unit wide each, narrower than the leaves' distance at the side.
    const thin = { ...BARS!, rings: [box(0, 10, 100, 40), box(10, 60, 10.6, 90), box(11, 45, 11.6, 55)] };
    const kit = cornerKit({ book: { leaves: 40, lastPage: 80, blockThickness: 5 } }, thin);
    const { unseen } = cornerPattern(kit).corner.turns;
    expect(kinds(kit).includes("unseen-parts")).toBe(unseen > 0);
  });

  it("tells of corners longer than the leaf has room for", () => {
    const kit = cornerKit({ book: { leafWidth: 75 } });
    const { leaves, corner } = cornerPattern(kit);
    // From 122 to the tail are 78 mm, and 75 less 5 are 70.
    expect(corner.turned).toBe(leaves.filter(({ fold }) => fold.kind === "corners").length);
    expect(doubtsOf(kit)).toContainEqual({ kind: "steep-creases", leaves: corner.turned, reach: 70 });
  });
});

describe("a kit that is cut, changed to corners by its reader", () => {
  it("goes without light and window, and says so", () => {
    const own = litKit({ fit: { head: 40 } });
    const kit = refitKit(own, { foldStyle: "corner" });
    expect(kit).toMatchObject({ light: undefined, insert: undefined, cells: undefined, motifs: [] });
    expect(doubtsOf(kit)).toContainEqual({ kind: "left-without-knife", light: true, window: true });
    const window = refitKit({ ...own, light: undefined }, { foldStyle: "corner" });
    expect(doubtsOf(window)).toContainEqual({ kind: "left-without-knife", light: false, window: true });
    const plain = refitKit(madeKit(), { foldStyle: "corner" });
    expect(kinds(plain)).not.toContain("left-without-knife");
    expect(plain).toEqual({ ...madeKit(), fit: { ...madeKit().fit, foldStyle: "corner" } });
  });

  it("keeps both where it stays a kit that is cut", () => {
    expect(refitKit(litKit(), { foldStyle: "stepped" })).toMatchObject({ light: LIGHT, insert: WINDOW });
  });
});
