import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { kitJsonSchema } from "../../../src/input/kit/schema.ts";
import { randomKits } from "../../oracle/random-kits.ts";
import { FIXTURE_KITS, fixtureFrontMatter } from "./kit-folders.ts";

// Ajv is an independent reader of JSON Schema, draft 2020-12.
const validate = new Ajv2020.default({ allErrors: true, strict: false, validateFormats: false }).compile(
  kitJsonSchema(),
);

/** Where a document does not conform, or nothing. */
function faults(document: unknown): string[] {
  if (validate(document)) return [];
  return validate.errors!.map((error) => error.instancePath);
}

interface Described {
  readonly description?: string;
  readonly properties?: Record<string, Described>;
  readonly items?: Described;
}

/** A fixture kit with one place changed. */
function changed(path: readonly (string | number)[], value: unknown): unknown {
  const document = fixtureFrontMatter("harbour-moon");
  const last = path.at(-1)!;
  const inner = path.slice(0, -1).reduce((at, step) => at[step], document);
  if (value === undefined) delete inner[last];
  else inner[last] = value;
  return document;
}

describe("kitJsonSchema()", () => {
  it.each(FIXTURE_KITS)("accepts the fixture kit %s", (slug) => {
    expect(faults(fixtureFrontMatter(slug))).toEqual([]);
  });

  it("accepts the random kits", () => {
    for (const kit of randomKits()) expect(faults(kit.frontMatter)).toEqual([]);
  });

  it.each<[string, (string | number)[], unknown]>([
    ["lengths as text", ["book", "leafHeight"], "8 1/2 in"],
    ["a height to solve", ["fit", "height"], "solve"],
    ["a number of picture leaves", ["fit", "pictureLeaves"], 120],
    ["lost leaves", ["fit", "lostLeaves"], [87]],
    ["no gauge", ["gauge"], undefined],
    ["no last page", ["book", "lastPage"], undefined],
    ["a supply of the kit's own", ["supplies"], [{ item: "ribbon", quantity: 40, unit: "cm", price: 1.5 }]],
  ])("accepts %s", (_, path, value) => {
    expect(faults(changed(path, value))).toEqual([]);
  });

  it.each<[string, (string | number)[], unknown, string]>([
    ["an unknown key", ["colour"], "blue", ""],
    ["an unknown key of the book", ["book", "leafHight"], 216, "/book"],
    ["an unknown key of the fit", ["fit", "margin"], 3, "/fit"],
    ["an unknown key of a level", ["levels", 0, "colour"], "blue", "/levels/0"],
    ["an unknown key of the picture", ["picture", "scale"], 2, "/picture"],
    ["an unknown key of the gauge", ["gauge", "width"], 2, "/gauge"],
    ["no title", ["title"], undefined, ""],
    ["no leaf width", ["book", "leafWidth"], undefined, "/book"],
    ["a single level", ["levels"], [{ name: "rim", depth: 10, background: true }], "/levels"],
    ["half a leaf", ["book", "leaves"], 12.5, "/book/leaves"],
    ["another direction", ["book", "direction"], "up", "/book/direction"],
    ["shapes by something else than a word or a colour", ["picture", "levels", "rim"], [7], "/picture/levels/rim/0"],
    ["an opening beyond once round", ["fit", "opening"], 400, "/fit/opening"],
    ["three borders", ["fit", "borderLeaves"], [1, 2, 3], "/fit/borderLeaves"],
    ["one border", ["fit", "borderLeaves"], [1], "/fit/borderLeaves"],
  ])("rejects %s", (_, path, value, place) => {
    expect(faults(changed(path, value))).toContain(place);
  });

  it("describes every field, with what is allowed", () => {
    const undescribed: string[] = [];
    const walk = (schema: Described, path: string): void => {
      for (const [key, inner] of Object.entries(schema.properties ?? {})) {
        if (!inner.description) undescribed.push(`${path}${key}`);
        walk(inner, `${path}${key}.`);
      }
      if (schema.items) walk(schema.items, `${path}[].`);
    };
    walk(kitJsonSchema(), "");
    expect(undescribed).toEqual([]);
  });
});
