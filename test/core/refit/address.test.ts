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

  it.each([
    ["leaves=abc"],
    ["leaves=12.5"],
    ["leaves=-4"],
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
