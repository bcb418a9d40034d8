import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { tryFit } from "../../../src/core/pattern/compute.ts";
import type { LevelMap } from "../../../src/core/picture/level-map.ts";
import type { Offer, OfferedChange } from "../../../src/core/refit/offer.ts";
import { offersFor } from "../../../src/core/refit/offers.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { toRadians } from "../../../src/core/units/angle.ts";
import { type KitChanges, LIGHT, litKit, madeKit, WELL } from "../kit/made-kit.ts";
import { failureOf, patternOf } from "../pattern/computed.ts";

const made = madeKit();
const lit = litKit();

/** The made kit with a stated opening (degrees) and the picture leaves or the height solved for it. */
function opened(degrees: number, solved: "pictureLeaves" | "height", changes: KitChanges = {}): Kit {
  const opening = toRadians(degrees);
  const shape =
    solved === "height"
      ? ({ solve: "height", pictureLeaves: "fill", opening } as const)
      : ({ solve: "pictureLeaves", height: 40, opening } as const);
  return madeKit({ ...changes, fit: { shape, ...changes.fit } });
}

/** A well on one side, where the front is steep in a wide open book: a wide light comes nearer to the window than a narrow one. */
function sideWell(setback: number): Kit {
  const [rim, well] = WELL.shapes;
  const ring = [...well!.rings[0]!].map(([x, y]): [number, number] => [x < 50 ? 50 : 90, y]);
  const picture: LevelMap = { ...WELL, shapes: [rim!, { ...well!, rings: [ring] }] };
  const shape = { solve: "opening", pictureLeaves: "fill", height: 140 } as const;
  return litKit({ picture, light: { ...LIGHT, setback, diameter: 70 }, fit: { shape, head: undefined } });
}

const THIN = { leaves: 8, blockThickness: 1.2, pageOneLeaf: leafNumber(1), lastPage: 16 };
const THICK = { leaves: 1200, blockThickness: 180 };
const height = (mm: number): OfferedChange => ({ kind: "height", height: mm });
const borders = (leaves: number): OfferedChange => ({ kind: "borders", before: leaves, after: leaves });
const book = (bound: "least" | "most", leaves: number): OfferedChange => ({
  kind: "book",
  bound,
  leaves,
  thickness: expect.closeTo(leaves * 0.15, 9) as unknown as number,
});

/*
 * By hand from the kit's own figures: leaves of 0.15 mm, so closed picture leaves show 0.15 mm each; two reaches of a flap and
 * 5 mm on a leaf; the well is 0.7 of the picture's height, and the light 20 wide with 1 mm free on each side.
 */
const BY_HAND: readonly (readonly [string, Kit, Refit, readonly (readonly OfferedChange[])[]])[] = [
  ["a low book: the leaf's height", made, { leafHeight: 36 }, [[height(36)]]],
  ["a picture higher than the leaf: the leaf's height", made, { height: 400 }, [[height(120)]]],
  [
    "a book of 8 leaves: 2 between borders of 3, or 10 with borders of 4",
    made,
    THIN,
    [[borders(3)], [book("least", 10)]],
  ],
  // Two picture leaves of 9 beside the middle show 2 × 70 × (sin 60° − sin 40°), 31 mm; three of 10 show more than 40.
  [
    "a book of 5 leaves with more borders before than after: 2 of 3 beside none",
    madeKit({ fit: { borderLeaves: [1, 6] } }),
    { leaves: 5, blockThickness: 0.75, lastPage: 10 },
    [[{ kind: "borders", before: 0, after: 3 }], [book("least", 10)]],
  ],
  [
    "the same the other way round",
    madeKit({ fit: { borderLeaves: [6, 1] } }),
    { leaves: 5, blockThickness: 0.75, lastPage: 10 },
    [[{ kind: "borders", before: 3, after: 0 }], [book("least", 10)]],
  ],
  [
    "a leaf of 40 mm: flaps of 17.5, or one fold more, 2 × 20 − 10",
    made,
    { leafWidth: 40 },
    [[{ kind: "depths", depths: [9, 17.5] }], [{ kind: "folds", foldStyle: "stepped" }]],
  ],
  [
    "a leaf of 52 mm with stepped folds: 2 × 30 − 10 and 5 more are too deep, 26.5 and 9 are not",
    madeKit({ levels: [made.levels[0]!, { ...made.levels[1]!, depth: 30 }], fit: { foldStyle: "stepped" } }),
    { leafWidth: 52 },
    [[{ kind: "depths", depths: [9.5, 28] }]],
  ],
  ["1200 leaves: 266 show less than 40 mm", made, THICK, [[borders(467)], [book("most", 274)]]],
  ["a picture of 4 mm on leaves that show 4.8", made, { height: 4 }, [[height(5)], [borders(7)], [book("most", 34)]]],
  [
    "an opening beyond flat: flat",
    opened(30, "pictureLeaves"),
    { openingDegrees: 200 },
    [[{ kind: "opening", degrees: 180 }]],
  ],
  [
    "a leaf of 30 mm: flaps of 12.5",
    made,
    { leafWidth: 30, leafHeight: 40 },
    [[{ kind: "depths", depths: [6.5, 12.5] }]],
  ],
  ["a light too wide: the well's 56 mm less 2", lit, { lightDiameter: 70 }, [[{ kind: "light-width", diameter: 54 }]]],
  ["a light too high: the well's 56 mm", lit, { lightHeight: 90 }, [[{ kind: "light-height", height: 56 }]]],
  ["a well of 14 mm: one of 22.4", lit, { height: 20 }, [[height(32)]]],
  ["the same without a window", litKit({ insert: undefined }), { height: 20 }, [[height(32)]]],
  [
    "a low book whose well is then too low for the light: 0.7 × 70 − 1 on whole millimetres",
    lit,
    { leafHeight: 70, lightHeight: 52 },
    [[height(70), { kind: "light-height", height: 48 }]],
  ],
];

/** What one part of an offer says, as a figure of a refit; another book's figures are checked with the books. */
function figureOf(said: OfferedChange): Refit {
  switch (said.kind) {
    case "height":
      return { height: said.height };
    case "borders":
      return { borderLeaves: [said.before, said.after] };
    case "light-width":
      return { lightDiameter: said.diameter };
    case "light-height":
      return { lightHeight: said.height };
    case "opening":
      return { openingDegrees: said.degrees };
    case "depths":
      return { depths: said.depths };
    case "folds":
      return { foldStyle: said.foldStyle };
    case "book":
      return {};
  }
}

describe("offersFor(kit, refit)", () => {
  it.each(BY_HAND)("%s", (_, kit, refit, says) => {
    failureOf(refitKit(kit, refit));
    const offers = offersFor(kit, refit);
    expect(offers.map((one) => one.says)).toEqual(says);
    for (const offer of offers) {
      patternOf(refitKit(kit, offer.refit));
      expect(offer.otherBook).toBe(offer.says[0]!.kind === "book");
      if (offer.otherBook) continue;
      const { head: _head, ...changed } = offer.refit;
      expect(changed).toEqual(Object.assign({ ...refit }, ...offer.says.map(figureOf)));
    }
  });

  it("offers nothing where the book's own figures contradict each other: they are to be read again", () => {
    expect(offersFor(made, { leaves: 30, blockThickness: 4.5, lastPage: 240 })).toEqual([]);
  });

  it("offers nothing for a kit that fits", () => {
    expect(offersFor(made, {})).toEqual([]);
    expect(offersFor(lit, {})).toEqual([]);
    expect(offersFor(lit, { lightDiameter: 54, lightHeight: 20 })).toEqual([]);
  });

  it("offers nothing where nothing helps", () => {
    expect(offersFor(litKit({ light: { ...LIGHT, setback: 0 } }), {})).toEqual([]);
  });

  // By hand: shallower in steps of 5 %, and lower.
  it("changes depths and height together where neither helps alone", () => {
    const offers = offersFor(made, { leafWidth: 40, leafHeight: 36 });
    expect(offers.map(({ says }) => says)).toEqual([[{ kind: "depths", depths: [8.5, 17] }, height(36)]]);
    expect(offers[0]!.refit).toEqual({ leafWidth: 40, leafHeight: 36, depths: [8.5, 17], height: 36, head: 0 });
  });
});

describe("an opening that offersFor(kit, refit) changes", () => {
  const offeredOpening = (kit: Kit, refit: Refit): Offer => {
    const found = offersFor(kit, refit).find(({ says }) => says[0]!.kind === "opening");
    if (!found) throw new Error("no other opening is offered");
    return found;
  };

  it.each([
    ["wider, for more width", opened(10, "pictureLeaves"), -1],
    ["narrower, for less height", opened(170, "height"), 1],
    ["narrower from between two degrees", opened(169.5, "height"), 1],
  ] as const)("is the nearest that fits: %s", (_, kit, nearer) => {
    const { refit, says } = offeredOpening(kit, {});
    const degrees = refit.openingDegrees!;
    expect(says).toEqual([{ kind: "opening", degrees }]);
    expect(Number.isInteger(degrees)).toBe(true);
    expect(tryFit(refitKit(kit, { openingDegrees: degrees }))).toBeUndefined();
    expect(tryFit(refitKit(kit, { openingDegrees: degrees + nearer }))).toBeDefined();
  });

  /*
   * Leaves on one side of the fan show most when it is half open, so a picture that is too high there fits both narrower and
   * wider. Every degree is tried here, where the program steps.
   */
  it.each([120, 125, 130, 145, 150, 155])("is the nearer one of a narrower and a wider: %d°", (degrees) => {
    const kit = opened(degrees, "height", {
      book: { leafHeight: 19.5 },
      fit: { borderLeaves: [30, 2], head: undefined },
    });
    expect(tryFit(kit)).toBeDefined();
    const all = Array.from({ length: 176 }, (_, i) => i + 5);
    const fitting = all.filter((openingDegrees) => tryFit(refitKit(kit, { openingDegrees })) === undefined);
    const nearest = fitting.toSorted((a, b) => Math.abs(a - degrees) - Math.abs(b - degrees))[0];
    expect(offeredOpening(kit, {}).refit.openingDegrees).toBe(nearest);
  });

  it("is sought once round, for a picture that is read walking round", () => {
    const along = opened(358, "pictureLeaves", { fit: { view: "along" } });
    expect(tryFit(along)).toBeUndefined();
    // 40 leaves show no more than once round their tips; by hand 361° is beyond it, and the whole degree below is 360°.
    expect(offeredOpening(along, { openingDegrees: 361 }).refit.openingDegrees).toBe(360);
    expect(offeredOpening(along, { openingDegrees: 360.5 }).refit.openingDegrees).toBe(360);
  });
});

describe("flaps of what offersFor(kit, refit) offers", () => {
  const springing = (kit: Kit, refit: Refit): boolean[] => offersFor(kit, refit).map(({ springsOpen }) => springsOpen);

  /*
   * By hand: at the head all 40 leaves have flaps of the wall, 20 deep: at 40 mm from the gutter they lie on 6 mm of leaves and
   * count κ × 6 mm, so the book opens to κ × 6 / 40 radians of itself. Half a turn is at κ = 20.94.
   */
  it.each([
    [2, [false]],
    [20.9, [false]],
    [21, [true]],
  ])("with a bulk of %d push the book beyond flat or not: %j", (flapBulk, springs) => {
    expect(springing(made, { height: 400, flapBulk })).toEqual(springs);
  });

  it("say nothing of a book that is opened as far as they push it", () => {
    const shape = { solve: "nothing", pictureLeaves: "fill", height: 40, opening: toRadians(270) } as const;
    const round = madeKit({ fit: { view: "along", shape } });
    // By hand: flaps of 17.5 lie at 5 mm from the gutter and open to κ × 6 / 5; 270° are 4.712 radians, so κ is 3.927.
    expect(springing(round, { leafWidth: 40, flapBulk: 3.9 })[0]).toBe(false);
    expect(springing(round, { leafWidth: 40, flapBulk: 3.95 })[0]).toBe(true);
  });

  it("are told of a smaller light, too", () => {
    // By hand: at most all 60 leaves have flaps of the well, at 40 mm from the gutter, and at least those of the wall, at 80.
    const [least, most] = [(Math.PI * 40) / 9, (Math.PI * 80) / 9];
    expect(springing(lit, { lightDiameter: 70, flapBulk: 0.99 * least })).toEqual([false]);
    expect(springing(lit, { lightDiameter: 70, flapBulk: 1.01 * most })).toEqual([true]);
  });
});

describe("a light near the window in offersFor(kit, refit)", () => {
  // By hand: the largest in the well is 0.4 × 140 less 2, 54 mm; its tenths in whole millimetres.
  const SHARES = [54, 48, 43, 37, 32, 27];

  it.each([1.6, 1.7, 1.8, 2, 3])("is made smaller by tenths until it stands clear, setback %d", (setback) => {
    const kit = sideWell(setback);
    const [offer] = offersFor(kit, {});
    const at = SHARES.indexOf(offer!.refit.lightDiameter!);
    expect(at).toBeGreaterThanOrEqual(0);
    patternOf(refitKit(kit, offer!.refit));
    for (const wider of SHARES.slice(0, at))
      expect(failureOf(refitKit(kit, { lightDiameter: wider })).kind).toBe("light-near-window");
  });

  // By hand: a square on its corner, 56 mm across, is as much narrower as a light is high, and the light is 1 mm free.
  it("is made narrower or lower where either helps, and narrower where the picture is changed, too", () => {
    const [rim, well] = WELL.shapes;
    const diamond: [number, number][] = [
      [50, 15],
      [85, 50],
      [50, 85],
      [15, 50],
    ];
    const kit = litKit({ insert: undefined, picture: { ...WELL, shapes: [rim!, { ...well!, rings: [diamond] }] } });
    const says = (refit: Refit) => offersFor(kit, refit).map((offer) => offer.says);
    expect(says({ lightDiameter: 30, lightHeight: 40 })).toEqual([
      [{ kind: "light-width", diameter: 14 }],
      [{ kind: "light-height", height: 24 }],
    ]);
    expect(says({ leafHeight: 70, lightDiameter: 30, lightHeight: 34.5 })).toEqual([
      [height(70), { kind: "light-width", diameter: 12 }],
    ]);
  });

  it("is not offered below 5 mm", () => {
    const low = (diameter: number) =>
      litKit({
        insert: undefined,
        fit: { shape: { solve: "opening", pictureLeaves: "fill", height: 10 } },
        light: { ...LIGHT, diameter, height: 3 },
      });
    // By hand: a well of 7 mm takes 5; one of 6.3, in a picture of 9 mm, takes 4.
    expect(offersFor(low(20), {}).map(({ says }) => says)).toEqual([[{ kind: "light-width", diameter: 5 }]]);
    expect(
      offersFor(low(20), { height: 9 })
        .flatMap(({ says }) => says)
        .map(({ kind }) => kind),
    ).toEqual(["height"]);
  });

  it("is measured in sixteenths of an inch in inches", () => {
    const [offer] = offersFor(litKit({ units: "in" }), { lightDiameter: 70 });
    // By hand: 54 mm are 34.02 sixteenths.
    expect(offer!.refit.lightDiameter).toBeCloseTo((34 * 25.4) / 16, 9);
  });
});
