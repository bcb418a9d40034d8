import { describe, expect, it } from "vitest";
import { fromAddress } from "../../src/core/refit/address.ts";
import { ignoredText } from "../../src/words/fields.ts";
import { litKit } from "../core/kit/made-kit.ts";

const KIT = litKit();

function told(address: string): string[] {
  return fromAddress(new URLSearchParams(address), KIT).ignored.map((one) => ignoredText(one, KIT));
}

describe("ignoredText(ignored, kit)", () => {
  it.each([
    ["leaves=99999", "Leaves: “99999” cannot be used and is ignored. Allowed: a whole number, 4 to 3000."],
    ["thick=0", "Thickness: “0” cannot be used and is ignored. Allowed: 1 mm to 200 mm."],
    ["bulk=-1", "Flap bulk: “-1” cannot be used and is ignored. Allowed: a number, 0 to 20."],
    ["units=ft", "Units: “ft” cannot be used and is ignored. Allowed: mm, in."],
    ["depths=1", "Depth of rim: “1” cannot be used and is ignored. Allowed: 3 lengths, one for each level."],
  ])("names the figure, what was given and what is allowed: %s", (address, words) => {
    expect(told(address).map((text) => text.replaceAll("\u00a0", " "))).toEqual([words]);
  });

  it("shows the beginning of what is long", () => {
    expect(told(`lost=${"7".repeat(10_000)}`)[0]).toContain(`“${"7".repeat(40)}…”`);
  });

  // Unicode general category C: controls, format characters (U+202E turns the writing around), lone surrogates.
  it("shows no character that would act instead of standing there", () => {
    expect(told(`read=${encodeURIComponent("a\u0000b\nc\u202ed")}`)[0]).toContain("“a·b·c·d”");
    expect(told(`read=${"x".repeat(39)}${encodeURIComponent("😀😀")}`)[0]).not.toMatch(/\p{C}/u);
  });
});
