import Ajv2020 from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { publishedText } from "../../core/pattern/published.ts";
import { KITS } from "../../core/plan/made.ts";

const number = { type: "number" };
const count = { type: "integer", minimum: 0 };
const text = { type: "string", minLength: 1 };
const object = (required: Record<string, unknown>, optional: Record<string, unknown> = {}) => ({
  type: "object",
  required: Object.keys(required),
  properties: { ...required, ...optional },
});
const list = (items: unknown) => ({ type: "array", items });
const maybe = (schema: { type: string }) => ({ ...schema, type: [schema.type, "null"] });

/** Small letters, digits and hyphens. */
const TOKEN = "^[a-z0-9]+(-[a-z0-9]+)*$";

/** What readers of pattern.json may count on, as JSON Schema; more keys may come. */
const SCHEMA = object(
  {
    schema: { const: "leaflight/pattern/2" },
    kit: { type: "string", pattern: "^[a-z0-9-]+$" },
    title: text,
    unit: { const: "mm" },
    book: object({
      leafHeight: number,
      leafWidth: number,
      blockThickness: number,
      leaves: count,
      pageOneLeaf: count,
      lastPage: count,
      plates: list(object({ afterPage: count, leaves: count })),
      direction: { enum: ["ltr", "rtl"] },
      square: number,
      boardThickness: number,
    }),
    levels: list(object({ name: text, depth: number }, { line: count, background: { const: true } })),
    fit: object({
      firstLeaf: count,
      lastLeaf: count,
      opening: { type: "number", exclusiveMinimum: 0, maximum: 6.284 },
      spine: { enum: ["flat", "rounded"] },
      view: { enum: ["front", "along"] },
      head: number,
      height: number,
      width: number,
      stretch: number,
      tipWidth: number,
      holdWidth: number,
      boardWidth: number,
      restingOpening: number,
      foldStyle: { enum: ["single", "stepped"] },
      markStep: number,
      leastTab: number,
    }),
    leaves: list(
      object(
        {
          leaf: count,
          patternPage: maybe({ type: "integer" }),
          bookPage: maybe({ type: "integer" }),
          x: list(number),
          spans: list(object({ from: number, to: number, level: count })),
          cuts: list(object({ at: number, depth: number })),
          tacks: list(object({ from: number, to: number })),
        },
        { unnumbered: { type: "object", required: ["kind", "index", "of"] } },
      ),
    ),
    absorbed: list(object({ leaf: count, from: number, to: number, level: count, into: count })),
    lostLeaves: list(count),
    supplies: list(
      object(
        { kind: { enum: ["material", "tool"] }, item: text, quantity: number, unit: text, note: { type: "string" } },
        { id: text, price: number },
      ),
    ),
    time: object({
      minutes: count,
      first: count,
      drying: number,
      byStage: { type: "object", additionalProperties: number },
    }),
    findings: list({ type: "object", required: ["kind"], properties: { kind: { type: "string", pattern: TOKEN } } }),
    warnings: list(text),
  },
  {
    light: { type: "object" },
    insert: object({
      lip: number,
      hinge: { enum: ["left", "right"] },
      panel: { enum: ["wrap", "flat"] },
      stringLength: number,
      frameLength: number,
      parts: list(
        object({
          id: { type: "string", pattern: TOKEN },
          kind: { type: "string", pattern: TOKEN },
          name: text,
          material: { enum: ["card", "acetate", "paper"] },
          count,
          frame: { enum: ["wrap", "flat", "own"] },
          outlines: list(list(list(number))),
          scores: list(list(list(number))),
          marks: list(object({ line: list(list(number)), label: { type: "string" } })),
          width: number,
          height: number,
          area: number,
          perimeter: number,
        }),
      ),
    }),
  },
);

const validate = new Ajv2020.default({ allErrors: true, strict: false }).compile(SCHEMA);

describe("patternJson(kit, pattern, findings, supplies, effort)", () => {
  it.each(KITS)("%s: has every key that readers count on, with values of its kind", (_, folder) => {
    const valid = validate(JSON.parse(publishedText(folder)));
    expect(
      validate.errors?.map((error) => `${error.instancePath} ${error.message} ${JSON.stringify(error.params)}`) ?? [],
    ).toEqual([]);
    expect(valid).toBe(true);
  });

  it.each(KITS)("%s: says which leaf an unnumbered one is, and only of those", (_, folder) => {
    const { leaves } = JSON.parse(publishedText(folder));
    for (const leaf of leaves) expect("unnumbered" in leaf).toBe(leaf.bookPage === null);
  });

  it.each(KITS)("%s: says each finding once as a record and once as a sentence, in one order", (_, folder) => {
    const { findings, warnings } = JSON.parse(publishedText(folder));
    expect(findings.map((one: { kind: string }) => one.kind)).toEqual(folder.findings.map((one) => one.kind));
    expect(warnings).toHaveLength(findings.length);
  });

  it("names parts the same in every language, by id, kind and name", () => {
    const { insert } = JSON.parse(publishedText(KITS.find(([name]) => name === "harbour-moon")![1]));
    const named = insert.parts.map(({ id, kind, name }: Record<string, string>) => [id, kind, name]);
    expect(named).toEqual([
      ["base-frame", "base-frame", "base frame"],
      ["glazing", "glazing", "glazing"],
      ["door", "door", "door"],
      ["closure-tab", "closure-tab", "closure tab"],
      ["decoration-guide", "decoration-guide", "decoration guide"],
      ["holder", "holder", "holder"],
      ["motif-lantern", "largest-motif", "motif lantern"],
      ["motif-gull", "motif", "motif gull"],
      ["motif-grass", "motif", "motif grass"],
    ]);
  });

  it.each(KITS)("%s: writes a line a leaf and no binary dust", (_, folder) => {
    const lines = publishedText(folder).split("\n");
    const { leaves } = JSON.parse(publishedText(folder));
    for (const leaf of leaves)
      expect(lines).toContainEqual(expect.stringMatching(`^ {4}{"leaf":${leaf.leaf},"patternPage"`));
    const pattern = publishedText(folder).replace(/"(note|warnings|item)":("[^"]*"|\[[^\]]*\])/g, "");
    expect(pattern.match(/\d\.\d{7,}/g)).toBeNull();
    expect(pattern).not.toMatch(/-0[,}\]]/);
  });
});
