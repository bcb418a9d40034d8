import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { fromAddress, toAddress } from "../../../src/core/refit/address.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { fc } from "../../seed.ts";

const length = fc.integer({ min: 1, max: 60_000 }).map((hundredths) => hundredths / 100);
const whole = fc.integer({ min: 1, max: 3000 });

const refits: fc.Arbitrary<Refit> = fc
  .record(
    {
      leafHeight: length,
      leafWidth: length,
      blockThickness: length,
      leaves: whole,
      pageOneLeaf: whole.map(leafNumber),
      lastPage: whole,
      plates: fc.array(fc.record({ afterPage: whole, leaves: whole }), { maxLength: 3 }),
      direction: fc.constantFrom("ltr" as const, "rtl" as const),
      borderLeaves: fc.tuple(fc.integer({ min: 0, max: 99 }), fc.integer({ min: 0, max: 99 })),
      head: length,
      height: length,
      openingDegrees: length,
      depths: fc.array(
        fc.integer({ min: 1, max: 4999 }).map((tenths) => tenths / 10),
        { minLength: 1, maxLength: 5 },
      ),
      units: fc.constantFrom("mm" as const, "in" as const),
      markStep: length,
      foldStyle: fc.constantFrom("single" as const, "stepped" as const),
      lightDiameter: length,
      lightHeight: length,
      flapBulk: length,
      lostLeaves: fc.array(whole.map(leafNumber), { maxLength: 4 }),
    },
    { requiredKeys: [] },
  )
  .map((refit) => refit as Refit);

describe("toAddress(refit), fromAddress(address)", () => {
  it("gives back every refit that was written", () => {
    fc.assert(
      fc.property(refits, (refit) => {
        expect(fromAddress(new URLSearchParams(toAddress(refit).toString()))).toEqual(refit);
      }),
    );
  });

  it("writes nothing for no change", () => {
    expect(toAddress({}).toString()).toBe("");
  });

  // Addresses are kept in links and printed as codes: their names and forms stay.
  it.each<[Refit, string]>([
    [{ leafHeight: 210, leafWidth: 130.5, blockThickness: 18 }, "height=210&width=130.5&thick=18"],
    [{ leaves: 180, pageOneLeaf: leafNumber(5), lastPage: 350 }, "leaves=180&page-one=5&last=350"],
    [{ plates: [{ afterPage: 20, leaves: 4 }], direction: "rtl" }, "plates=20x4&read=rtl"],
    [{ plates: [] }, "plates="],
    [{ borderLeaves: [0, 12], head: 0, height: 90 }, "border=0_12&head=0&picture=90"],
    [{ openingDegrees: 62.5, depths: [10, 20.25], units: "in" }, "open=62.5&depths=10_20.25&units=in"],
    [{ markStep: 0.79375, foldStyle: "stepped" }, "step=0.79375&folds=stepped"],
    [{ lightDiameter: 38, lightHeight: 45, flapBulk: 1.4 }, "light-wide=38&light-high=45&bulk=1.4"],
    [{ lostLeaves: [3, 70].map(leafNumber) }, "lost=3_70"],
    [{ lostLeaves: [] }, "lost="],
    [{ height: 1 / 3, depths: [0.1 + 0.2] }, "picture=0.33333&depths=0.3"],
  ])("writes %j as %s", (refit, address) => {
    expect(toAddress(refit)).toBe(address);
  });

  it.each([
    ["leaves=1", { leaves: 1 }],
    ["height=0", { leafHeight: 0 }],
    ["height=99999.9", { leafHeight: 99_999.9 }],
    ["depths=0.1_499.9", { depths: [0.1, 499.9] }],
    ["border=0_0", { borderLeaves: [0, 0] }],
    ["lost=1", { lostLeaves: [1] }],
    ["depths=", { depths: [] }],
  ])("reads what is just within bounds: %s", (text, refit) => {
    expect(fromAddress(new URLSearchParams(text))).toEqual(refit);
  });

  it.each([
    ["leaves=abc"],
    ["leaves=0"],
    ["leaves=12.5"],
    ["leaves=-4"],
    ["last=0"],
    ["page-one=0"],
    ["page-one=1.5"],
    ["height=-1"],
    ["height=100000"],
    ["border=1.5_2"],
    ["border=-1_2"],
    ["border="],
    ["lost=0"],
    ["lost=1.5"],
    ["depths=500"],
    ["folds=twice"],
    ["read="],
    ["height=Infinity"],
    ["thick="],
    ["read=up"],
    ["border=12"],
    ["border=1_2_3"],
    ["plates=12"],
    ["depths=0_5"],
    ["units=ft"],
    ["lost=2_x"],
  ])("leaves out what makes no sense: %s", (text) => {
    expect(fromAddress(new URLSearchParams(text))).toEqual({});
  });

  it("reads inches from a link as the millimetres that were written", () => {
    expect(toAddress({ leafHeight: 8.5 * 25.4 }).toString()).toBe("height=215.9");
  });
});
