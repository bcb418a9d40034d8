import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Field } from "../../../src/core/refit/field.ts";
import { bookFields, fieldsOf } from "../../../src/core/refit/fields.ts";
import { litKit, madeKit } from "../kit/made-kit.ts";

const opened = (view: "front" | "along") =>
  madeKit({ fit: { view, shape: { solve: "height", pictureLeaves: 20, opening: Math.PI / 2 } } });

const KIT = litKit({
  levels: [
    { name: "rim", depth: 11, line: undefined, background: false },
    { name: "wall", depth: 17, line: undefined, background: true },
    { name: "well", depth: 36, line: undefined, background: false },
  ],
  book: { pageOneLeaf: leafNumber(3), lastPage: 112, plates: [{ afterPage: 40, leaves: 2 }], direction: "rtl" },
  fit: { borderLeaves: [5, 7], markStep: 0.5, foldStyle: "stepped" },
});

const named = (fields: readonly Field[], name: string): Field => {
  const found = fields.filter((field) => field.name === name);
  if (found.length !== 1) throw new Error(`${found.length} fields ${name}`);
  return found[0]!;
};

/** What a field asks for, without its functions. */
function asked(field: Field): Partial<Field> {
  return JSON.parse(JSON.stringify(field));
}

describe("bookFields()", () => {
  // The bounds are those that the guide states for front matter.
  it("ask for a book's own figures, in order and within their bounds", () => {
    const length = { group: "book", form: "length" };
    const count = { group: "book", form: "count" };
    expect(bookFields().map(asked)).toEqual([
      { name: "leafHeight", key: "leafHeight", ...length, least: 40, most: 600 },
      { name: "leafWidth", key: "leafWidth", ...length, least: 30, most: 500 },
      { name: "blockThickness", key: "blockThickness", ...length, least: 1, most: 200 },
      { name: "leaves", key: "leaves", ...count, least: 4, most: 3000 },
      { name: "pageOneLeaf", key: "pageOneLeaf", ...count, least: 1, most: 3000 },
      { name: "lastPage", key: "lastPage", ...count, least: 1, most: 10000 },
      { name: "plates", key: "plates", group: "book", form: "plates" },
      { name: "direction", key: "direction", group: "book", form: "choice", options: ["ltr", "rtl"] },
    ]);
  });
});

describe("fieldsOf(kit)", () => {
  it("follow the book with what is folded and the light", () => {
    const length = { group: "fold", form: "length" };
    const depth = { key: "depths", ...length, least: 1, most: 200 };
    expect(fieldsOf(KIT).slice(bookFields().length).map(asked)).toEqual([
      { name: "borderLeaves", key: "borderLeaves", group: "fold", form: "borders" },
      { name: "height", key: "height", ...length, least: 5, most: 600 },
      { name: "depth0", level: 1, ...depth },
      { name: "depth1", level: 2, ...depth },
      { name: "depth2", level: 3, ...depth },
      { name: "foldStyle", key: "foldStyle", group: "fold", form: "choice", options: ["single", "stepped", "corner"] },
      { name: "markStep", key: "markStep", ...length, least: 0.1, most: 5 },
      { name: "lightDiameter", key: "lightDiameter", group: "light", form: "length", least: 5, most: 150 },
      { name: "lightHeight", key: "lightHeight", group: "light", form: "length", least: 5, most: 300 },
    ]);
  });

  it.each([
    ["height", "opening", { solve: "opening", pictureLeaves: "fill", height: 40 }, ["height"]],
    ["opening", "height", { solve: "height", pictureLeaves: 20, opening: 1 }, ["openingDegrees"]],
    ["both", "leaves", { solve: "pictureLeaves", height: 40, opening: 1 }, ["height", "openingDegrees"]],
    ["both", "nothing", { solve: "nothing", pictureLeaves: 9, height: 40, opening: 1 }, ["height", "openingDegrees"]],
  ] as const)("ask for %s where the kit solves the %s", (_, _solved, shape, names) => {
    const found = fieldsOf(madeKit({ fit: { shape } })).map(({ name }) => name);
    expect(found.filter((name) => name === "height" || name === "openingDegrees")).toEqual(names);
    expect(found.filter((name) => name.startsWith("light"))).toEqual([]);
  });

  // Flat on the table is 180°, once round 360°; see domain, view.
  it.each([
    ["front", 180],
    ["along", 360],
  ] as const)("open a picture seen %s at most %d°", (view, most) => {
    const field = named(fieldsOf(opened(view)), "openingDegrees");
    expect(asked(field)).toMatchObject({ key: "openingDegrees", group: "fold", form: "degrees", least: 5, most });
    expect(field.form === "degrees" && field.figure(opened(view))).toBeCloseTo(90, 9);
    expect(field.form === "degrees" && field.refit(77)).toEqual({ openingDegrees: 77 });
  });

  it.each([
    ["leafHeight", 160, 171, { leafHeight: 171 }],
    ["leafWidth", 110, 101, { leafWidth: 101 }],
    ["blockThickness", 9, 8.5, { blockThickness: 8.5 }],
    ["leaves", 60, 66, { leaves: 66 }],
    ["pageOneLeaf", 3, 4, { pageOneLeaf: 4 }],
    ["lastPage", 112, 110, { lastPage: 110 }],
    [
      "plates",
      [{ afterPage: 40, leaves: 2 }],
      [{ afterPage: 8, leaves: 1 }],
      { plates: [{ afterPage: 8, leaves: 1 }] },
    ],
    ["direction", "rtl", "ltr", { direction: "ltr" }],
    ["borderLeaves", [5, 7], [1, 2], { borderLeaves: [1, 2] }],
    ["height", 80, 75, { height: 75 }],
    ["depth0", 11, 9, { depths: [9, 17, 36] }],
    ["depth1", 17, 19, { depths: [11, 19, 36] }],
    ["depth2", 36, 33, { depths: [11, 17, 33] }],
    ["foldStyle", "stepped", "single", { foldStyle: "single" }],
    ["markStep", 0.5, 1, { markStep: 1 }],
    ["lightDiameter", 20, 24, { lightDiameter: 24 }],
    ["lightHeight", 20, 26, { lightHeight: 26 }],
  ] as const)("%s shows the kit's figure and changes only its own", (name, shown, given, refit) => {
    const field = named(fieldsOf(KIT), name);
    expect(field.figure(KIT)).toEqual(shown);
    const change = field.refit as (value: unknown, kit: typeof KIT) => unknown;
    expect(change(given, KIT)).toEqual(refit);
  });
});
