import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { heightOf, type Shape } from "../../../src/core/fit/shape.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import { tryFit } from "../../../src/core/pattern/compute.ts";
import type { Offer } from "../../../src/core/refit/offer.ts";
import { offersFor } from "../../../src/core/refit/offers.ts";
import { type Refit, refitKit } from "../../../src/core/refit/refit.ts";
import { toRadians } from "../../../src/core/units/angle.ts";
import { rulerStep } from "../../../src/core/units/ruler.ts";
import { fixtureKit } from "../../input/kit/kit-folders.ts";

import { failureOf, patternOf } from "../pattern/computed.ts";

const gull = fixtureKit("little-gull");
const moon = fixtureKit("harbour-moon");

/** The gull with a stated opening (degrees) and the picture leaves or the height solved for it. */
function opened(degrees: number, solved: "pictureLeaves" | "height"): Kit {
  const opening = toRadians(degrees);
  const height = heightOf(gull.fit.shape)!;
  const shape: Shape =
    solved === "height"
      ? { solve: "height", pictureLeaves: "fill", opening }
      : { solve: "pictureLeaves", height, opening };
  return { ...gull, fit: { ...gull.fit, shape } };
}

const MISFITS: readonly (readonly [name: string, kit: Kit, refit: Refit, changes: readonly (keyof Refit)[]])[] = [
  ["a low book", gull, { leafHeight: 110 }, ["height"]],
  ["a picture too high", gull, { height: 400 }, ["height"]],
  [
    "a thin book",
    gull,
    { leaves: 14, blockThickness: 1.6, pageOneLeaf: leafNumber(1), lastPage: 28 },
    ["borderLeaves", "leaves"],
  ],
  ["a narrow book", gull, { leafWidth: 45 }, ["depths"]],
  ["a thick book", gull, { leaves: 1200, blockThickness: 150 }, ["leaves"]],
  ["a picture too low for its leaves", gull, { height: 12 }, ["height", "leaves"]],
  ["an opening with too few leaves", opened(40, "pictureLeaves"), {}, ["openingDegrees", "height", "leaves"]],
  ["an opening that makes the picture too high", opened(170, "height"), {}, ["openingDegrees"]],
  ["an opening beyond flat", opened(150, "pictureLeaves"), { openingDegrees: 200 }, ["openingDegrees"]],
  ["a light too wide", moon, { lightDiameter: 90 }, ["lightDiameter"]],
  ["a light too high", moon, { lightHeight: 150 }, ["lightHeight"]],
  ["a picture too low for its window", moon, { height: 60 }, ["height"]],
  ["a low book with a light", moon, { leafHeight: 100 }, ["height"]],
];

function offering(offers: readonly Offer[], refit: Refit, key: keyof Refit): Offer | undefined {
  return offers.find((offer) => offer.refit[key] !== refit[key]);
}

describe("offersFor(kit, refit)", () => {
  it("offers nothing where the book's own figures contradict each other: they are to be read again", () => {
    expect(offersFor(gull, { leaves: 60, blockThickness: 7, lastPage: 240 })).toEqual([]);
  });

  it("says of a change that the flaps then push the book beyond flat", () => {
    const narrow = offersFor(moon, { leafHeight: 198, leafWidth: 70 });
    for (const { springsOpen, refit } of narrow)
      expect(springsOpen).toBe(patternOf(refitKit(moon, refit)).fit.restingOpening > Math.PI);
    expect(narrow.some(({ springsOpen }) => springsOpen)).toBe(true);
  });

  it.each(MISFITS)("offers for %s only what fits, light and window included", (_, kit, refit, changes) => {
    failureOf(refitKit(kit, refit));
    const offers = offersFor(kit, refit);
    for (const offer of offers) patternOf(refitKit(kit, offer.refit));
    for (const key of changes) expect(offering(offers, refit, key), key).toBeDefined();
  });

  it.each([
    ["height", gull, { leafHeight: 110 }, 1],
    ["height", gull, { height: 12 }, -1],
    ["openingDegrees", opened(40, "pictureLeaves"), {}, -1],
    ["openingDegrees", opened(170, "height"), {}, 1],
    ["openingDegrees", opened(150, "pictureLeaves"), { openingDegrees: 200 }, 1],
    ["lightDiameter", moon, { lightDiameter: 90 }, 1],
    ["lightHeight", moon, { lightHeight: 150 }, 1],
  ] as const)("offers the nearest %s: one step less of a change does not fit", (key, kit, refit, step) => {
    const offer = offering(offersFor(kit, refit), refit, key)!;
    const less = { ...offer.refit, [key]: (offer.refit[key] as number) + step };
    failureOf(refitKit(kit, less));
  });

  it.each([
    ["more", gull, { leaves: 14, blockThickness: 1.6 }],
    ["fewer", gull, { leaves: 1200, blockThickness: 150 }],
    ["more", opened(40, "pictureLeaves"), {}],
  ] as const)("offers the nearest book with %s leaves of the same paper", (way, kit, refit) => {
    const { book } = refitKit(kit, refit);
    const caliper = book.blockThickness / book.leaves;
    const offer = offersFor(kit, refit).find((one) => one.otherBook)!;
    const leaves = offer.refit.leaves!;
    expect(way === "more" ? leaves > book.leaves : leaves < book.leaves).toBe(true);
    expect(offer.says).toEqual([
      { kind: "book", bound: way === "more" ? "least" : "most", leaves, thickness: leaves * caliper },
    ]);
    expect(offer.refit.blockThickness! / leaves).toBeCloseTo(caliper, 9);
    const nearer = leaves + (way === "more" ? -1 : 1);
    const less = { ...offer.refit, leaves: nearer, blockThickness: nearer * caliper, lastPage: 2 * nearer };
    expect(tryFit(refitKit(kit, less))).toBeDefined();
  });

  it("offers the narrowest change of borders", () => {
    const refit = { leaves: 14, blockThickness: 1.6, pageOneLeaf: leafNumber(1), lastPage: 28 };
    const offer = offering(offersFor(gull, refit), refit, "borderLeaves")!;
    const [before, after] = offer.refit.borderLeaves!;
    expect(tryFit(refitKit(gull, { ...offer.refit, borderLeaves: [before + 1, after + 1] }))).toBeDefined();
  });

  it.each(MISFITS)("says of what it offers for %s just what it changes", (_, kit, refit) => {
    for (const { says, refit: offered } of offersFor(kit, refit)) {
      for (const one of says) {
        if (one.kind === "height") expect(one.height).toBe(offered.height);
        if (one.kind === "opening") expect(one.degrees).toBe(offered.openingDegrees);
        if (one.kind === "borders") expect([one.before, one.after]).toEqual(offered.borderLeaves);
        if (one.kind === "depths") expect(one.depths).toEqual(offered.depths);
        if (one.kind === "folds") expect(one.foldStyle).toBe(offered.foldStyle);
        if (one.kind === "light-width") expect(one.diameter).toBe(offered.lightDiameter);
        if (one.kind === "light-height") expect(one.height).toBe(offered.lightHeight);
      }
      expect(says.length).toBeGreaterThan(0);
    }
  });

  it.each(MISFITS)("offers for %s only what a ruler in the kit's units shows", (_, kit, refit) => {
    for (const units of ["mm", "in"] as const) {
      for (const { says } of offersFor({ ...kit, units }, refit)) {
        const lengths = says.flatMap((one) =>
          one.kind === "height" || one.kind === "light-height"
            ? [one.height]
            : one.kind === "light-width"
              ? [one.diameter]
              : one.kind === "depths"
                ? one.depths
                : [],
        );
        for (const mm of lengths) {
          const steps = mm / rulerStep(units, "fine");
          expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-6);
        }
      }
    }
  });

  it("offers nothing for a kit that fits", () => {
    expect(offersFor(gull, {})).toEqual([]);
    expect(offersFor(moon, {})).toEqual([]);
  });
});
