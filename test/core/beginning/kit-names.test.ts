import { describe, expect, it } from "vitest";
import { freeName, slugOf, titleOf } from "../../../src/core/beginning/kit-names.ts";
import { isAddressName } from "../../../src/input/files/address-name.ts";
import { fc } from "../../seed.ts";

describe("slugOf(title)", () => {
  it.each([
    ["Evening boat", "evening-boat"],
    ["  Möwe & Krähe! ", "mowe-krahe"],
    ["שלום", "kit"],
    ["--", "kit"],
  ])("calls the folder of %j %j", (title, slug) => {
    expect(slugOf(title)).toBe(slug);
  });

  it("is a name for a folder, whatever the title", () => {
    fc.assert(fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (title) => isAddressName(slugOf(title))));
    const cut = `${"a".repeat(59)} b`;
    expect(slugOf(cut)).toBe("a".repeat(59));
  });
});

describe("freeName(slug, taken)", () => {
  it.each([
    [[], "moon"],
    [["moon"], "moon-2"],
    [["moon", "moon-2", "moon-3"], "moon-4"],
    [["moon-2"], "moon"],
  ])("is another one beside %j", (taken, name) => {
    expect(freeName("moon", taken)).toBe(name);
  });
});

describe("titleOf(name)", () => {
  it("reads hyphens as spaces and begins with a capital", () => {
    expect(titleOf("evening_boat-2")).toBe("Evening boat 2");
    expect(titleOf("")).toBe("");
  });
});
