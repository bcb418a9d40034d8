import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { fromAddress, toAddress } from "../../../src/core/refit/address.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { fc } from "../../seed.ts";
import { litKit } from "../kit/made-kit.ts";

/** It has a field for every figure: height and opening are stated, and there are three levels and a light. */
const KIT = litKit({ fit: { shape: { solve: "pictureLeaves", height: 40, opening: 1 } } });

/** Lengths in mm with hundredths. */
const length = (least: number, most: number) =>
  fc.integer({ min: least * 100, max: most * 100 }).map((hundredths) => hundredths / 100);
const whole = (least: number, most: number) => fc.integer({ min: least, max: most });

// The bounds are those that the guide states for front matter.
const refits: fc.Arbitrary<Refit> = fc
  .record(
    {
      leafHeight: length(40, 600),
      leafWidth: length(30, 500),
      blockThickness: length(1, 200),
      leaves: whole(4, 3000),
      pageOneLeaf: whole(1, 3000).map(leafNumber),
      lastPage: whole(1, 10_000),
      plates: fc.array(fc.record({ afterPage: whole(1, 10_000), leaves: whole(1, 500) }), { maxLength: 3 }),
      direction: fc.constantFrom("ltr" as const, "rtl" as const),
      borderLeaves: fc.tuple(whole(0, 1000), whole(0, 1000)),
      head: length(0, 600),
      height: length(5, 600),
      openingDegrees: length(5, 180),
      depths: fc.array(length(1, 200), { minLength: 3, maxLength: 3 }),
      units: fc.constantFrom("mm" as const, "in" as const),
      markStep: length(0.1, 5),
      foldStyle: fc.constantFrom("single" as const, "stepped" as const),
      lightDiameter: length(5, 150),
      lightHeight: length(5, 300),
      flapBulk: length(0, 20),
      lostLeaves: fc.uniqueArray(whole(1, 3000).map(leafNumber), { maxLength: 4 }),
    },
    { requiredKeys: [] },
  )
  .map((refit) => refit as Refit);

/** Each name of an address with what a sensible value of it is, worked out apart from the program. */
const SENSIBLE: Readonly<Record<string, (refit: Refit) => boolean>> = {
  height: ({ leafHeight }) => between(leafHeight, 40, 600),
  width: ({ leafWidth }) => between(leafWidth, 30, 500),
  thick: ({ blockThickness }) => between(blockThickness, 1, 200),
  leaves: ({ leaves }) => count(leaves, 4, 3000),
  "page-one": ({ pageOneLeaf }) => count(pageOneLeaf, 1, 3000),
  last: ({ lastPage }) => count(lastPage, 1, 10_000),
  plates: ({ plates }) => plates!.every((one) => count(one.afterPage, 1, 10_000) && count(one.leaves, 1, 500)),
  read: ({ direction }) => direction === "ltr" || direction === "rtl",
  border: ({ borderLeaves }) => borderLeaves!.length === 2 && borderLeaves!.every((one) => count(one, 0, 1000)),
  head: ({ head }) => between(head, 0, 600),
  picture: ({ height }) => between(height, 5, 600),
  open: ({ openingDegrees }) => between(openingDegrees, 5, 180),
  depths: ({ depths }) => depths!.length === 3 && depths!.every((one) => between(one, 1, 200)),
  units: ({ units }) => units === "mm" || units === "in",
  step: ({ markStep }) => between(markStep, 0.1, 5),
  folds: ({ foldStyle }) => foldStyle === "single" || foldStyle === "stepped",
  "light-wide": ({ lightDiameter }) => between(lightDiameter, 5, 150),
  "light-high": ({ lightHeight }) => between(lightHeight, 5, 300),
  bulk: ({ flapBulk }) => between(flapBulk, 0, 20),
  lost: ({ lostLeaves }) => lostLeaves!.every((one, i) => count(one, 1, 3000) && lostLeaves!.indexOf(one) === i),
};

function between(value: number | undefined, least: number, most: number): boolean {
  return typeof value === "number" && value >= least && value <= most;
}

function count(value: number | undefined, least: number, most: number): boolean {
  return between(value, least, most) && Number.isInteger(value);
}

const NAMES = Object.keys(SENSIBLE);
const HOSTILE = [
  [
    "",
    " ",
    "0",
    "-0",
    "-1",
    "99999",
    "0.0000001",
    "1e308",
    "1e3",
    "-1e308",
    "NaN",
    "Infinity",
    "0x10",
    "0b11",
    "1_000",
  ],
  [
    "٣",
    "９０",
    "½",
    "12½",
    "1/0",
    "3/4 in",
    "8 1/2 in",
    "21 cm",
    "210,5",
    "1,2",
    "1_2",
    "1_2_3",
    "1__2",
    "_",
    "12x4.",
    "x",
  ],
  ["1x1", "1x501", "0x0", "9".repeat(10_000), "1_".repeat(5_000), "1x1.".repeat(2_500), "\u0000", "\u202e12", "12\n13"],
  [
    "<script>alert(1)</script>",
    "%",
    "%zz",
    "ltr",
    "rtl",
    "mm",
    "in",
    "single",
    "twice",
    "__proto__",
    "[object Object]",
  ],
].flat();

const read = (text: string) => fromAddress(new URLSearchParams(text), KIT);

describe("toAddress(refit), fromAddress(address, kit)", () => {
  it("gives back every refit that was written", () => {
    fc.assert(
      fc.property(refits, (refit) => {
        expect(read(toAddress(refit))).toEqual({ refit, ignored: [] });
      }),
    );
  });

  it("takes only what is within the panel's bounds, whatever the address says, and names each other figure once", () => {
    const pair = fc.tuple(
      fc.constantFrom(...NAMES),
      fc.oneof(fc.constantFrom(...HOSTILE), fc.string(), fc.double().map(String)),
    );
    fc.assert(
      fc.property(fc.array(pair, { maxLength: 12 }), (pairs) => {
        const { refit, ignored } = fromAddress(new URLSearchParams(pairs), KIT);
        const asked = new Set(pairs.map(([name]) => name));
        const taken = new Set(
          toAddress(refit)
            .split("&")
            .filter(Boolean)
            .map((part) => part.split("=")[0]!),
        );
        expect(taken.size + ignored.length).toBe(asked.size);
        for (const name of taken) expect(SENSIBLE[name]!(refit), name).toBe(true);
        expect(new Set(ignored.map(({ field }) => field.key)).size).toBe(ignored.length);
      }),
      { numRuns: 500 },
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
    ["leaves=4&last=10000&page-one=3000", { leaves: 4, lastPage: 10_000, pageOneLeaf: 3000 }],
    ["height=40&width=500&thick=200", { leafHeight: 40, leafWidth: 500, blockThickness: 200 }],
    ["depths=1_2_200", { depths: [1, 2, 200] }],
    ["border=0_1000", { borderLeaves: [0, 1000] }],
    ["head=0&picture=5&step=0.1", { head: 0, height: 5, markStep: 0.1 }],
    ["open=180&bulk=0", { openingDegrees: 180, flapBulk: 0 }],
    ["plates=10000x500&lost=1_3000", { plates: [{ afterPage: 10_000, leaves: 500 }], lostLeaves: [1, 3000] }],
    ["leaves=180&leaves=180", { leaves: 180 }],
    ["utm_source=x&constructor=1&__proto__=2&levels=3", {}],
  ])("reads what is just within bounds, and passes over what is none of ours: %s", (text, refit) => {
    expect(read(text)).toEqual({ refit, ignored: [] });
  });

  it.each([
    ["leaves=99999", "leaves", "99999", { kind: "count-outside", least: 4, most: 3000 }],
    ["leaves=12.5", "leaves", "12.5", { kind: "count-outside", least: 4, most: 3000 }],
    ["leaves=180&leaves=90", "leaves", "180 & 90", { kind: "count-outside", least: 4, most: 3000 }],
    ["step=0.0000001", "markStep", "0.0000001", { kind: "length-outside", least: 0.1, most: 5 }],
    ["bulk=99999", "flapBulk", "99999", { kind: "number-outside", least: 0, most: 20 }],
    ["thick=0", "blockThickness", "0", { kind: "length-outside", least: 1, most: 200 }],
    ["thick=", "blockThickness", "", { kind: "no-length" }],
    ["height=1e308", "leafHeight", "1e308", { kind: "no-length" }],
    ["open=181", "openingDegrees", "181", { kind: "degrees-outside", least: 5, most: 180 }],
    ["border=12", "borderLeaves", "12", { kind: "no-borders" }],
    ["border=1_2_3", "borderLeaves", "1_2_3", { kind: "no-borders" }],
    ["plates=12", "plates", "12", { kind: "no-plates" }],
    ["units=ft", "units", "ft", { kind: "no-option", options: ["mm", "in"] }],
    ["read=", "direction", "", { kind: "no-option", options: ["ltr", "rtl"] }],
    ["lost=2_2", "lostLeaves", "2_2", { kind: "no-leaves" }],
    ["lost=3001", "lostLeaves", "3001", { kind: "no-leaves" }],
    ["depths=10_20", "depths", "10_20", { kind: "no-depths", count: 3 }],
    ["depths=10_20_201", "depths", "10_20_201", { kind: "length-outside", least: 1, most: 200 }],
  ])("leaves out what makes no sense: %s", (text, key, given, fault) => {
    const { refit, ignored } = read(text);
    expect(refit).toEqual({});
    expect(ignored.map((one) => [one.field.key, one.given, one.fault])).toEqual([[key, given, fault]]);
  });

  it("names of the depths the level whose depth is wrong", () => {
    const [one] = read("depths=10_0.5_30").ignored;
    expect(one!.field).toMatchObject({ key: "depths", level: 2 });
  });

  it("reads without a kit only what is a book's", () => {
    const address = new URLSearchParams("leaves=180&thick=0&picture=9999&depths=0&lost=x&bulk=-1");
    const { refit, ignored } = fromAddress(address);
    expect(refit).toEqual({ leaves: 180 });
    expect(ignored.map(({ field }) => field.key)).toEqual(["blockThickness"]);
  });

  it("reads inches from a link as the millimetres that were written", () => {
    expect(toAddress({ leafHeight: 8.5 * 25.4 }).toString()).toBe("height=215.9");
  });
});
