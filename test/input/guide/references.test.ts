import { describe, expect, it } from "vitest";
import { z } from "zod";
import { REFERENCES, type ReferenceName } from "../../../src/core/guide/reference.ts";
import { referenceOf, SCHEMAS } from "../../../src/input/guide/references.ts";

interface Json {
  readonly properties?: Readonly<Record<string, Json>>;
  readonly items?: Json;
  readonly anyOf?: readonly Json[];
  readonly required?: readonly string[];
  readonly default?: unknown;
  readonly enum?: readonly string[];
  readonly minimum?: number;
  readonly maximum?: number;
}

/** A key of a JSON Schema with what that says of it. */
interface Key {
  readonly path: string;
  readonly required: boolean;
  readonly json: Json;
}

/** Every key of a JSON Schema, which Zod writes by itself: none of our own walking. Keys that stand again elsewhere count once. */
function keysOf(json: Json, path = "", known = new Set<string>()): Key[] {
  const again = json.properties && JSON.stringify(json.properties);
  if (again !== undefined && known.has(again)) return [];
  if (again !== undefined) known.add(again);
  const own = Object.entries(json.properties ?? {}).flatMap(([key, inner]) => {
    const at = path === "" ? key : `${path}.${key}`;
    return [{ path: at, required: json.required?.includes(key) ?? false, json: inner }, ...keysOf(inner, at, known)];
  });
  return [
    ...own,
    ...(json.items ? keysOf(json.items, path === "" ? "" : `${path}[]`, known) : []),
    ...(json.anyOf ?? []).flatMap((one) => keysOf(one, path, known)),
  ];
}

const jsonOf = (name: ReferenceName) => z.toJSONSchema(SCHEMAS[name], { io: "input" }) as Json;
const rowsOf = (name: ReferenceName) => referenceOf(name).flatMap(({ keys }) => keys);

describe.each(REFERENCES)("referenceOf(%j)", (name) => {
  const keys = keysOf(jsonOf(name));
  const rows = rowsOf(name);

  it("has each key of the schema once", () => {
    expect(rows.map(({ path }) => path).sort()).toEqual(keys.map(({ path }) => path).sort());
  });

  it("says of each what it is for and what is allowed", () => {
    expect(rows.filter(({ about, allowed }) => about.trim() === "" || allowed.length === 0)).toEqual([]);
  });

  it("says of each whether it may be left out, and what holds then as the schema states it", () => {
    for (const { path, required, json } of keys) {
      const { usual } = rows.find((row) => row.path === path)!;
      expect(usual.kind === "required", path).toBe(required);
      const stated = json.default;
      if (stated === undefined || JSON.stringify(stated).length <= 2) continue;
      expect(usual.kind, path).toBe("typed");
      const typed = "text" in usual ? usual.text : "";
      expect(typed.replace(/ mm$/, "").replaceAll(", ", ","), path).toBe(
        typeof stated === "string" ? stated.replaceAll(", ", ",") : JSON.stringify(stated),
      );
    }
  });

  it("gives numbers and words as the schema allows them", () => {
    for (const { path, json } of keys) {
      const allowed = rows.find((row) => row.path === path)!.allowed;
      if (json.enum) expect(allowed, path).toEqual([{ kind: "words", words: json.enum }]);
      if (json.minimum !== undefined && json.maximum !== undefined)
        expect(allowed[0], path).toMatchObject({ kind: "number", least: json.minimum, most: json.maximum });
    }
  });

  it("leads from each key that holds keys to their group", () => {
    const groups = referenceOf(name).map(({ path }) => path);
    expect(groups[0]).toBe("");
    expect(rows.flatMap(({ group }) => group ?? [])).toEqual(expect.arrayContaining(groups.slice(1)));
    expect(groups).toEqual(expect.arrayContaining(rows.flatMap(({ group }) => group ?? [])));
  });
});

describe("the tables of keys", () => {
  // By hand, from what the computation does where a key is left out.
  it.each<[ReferenceName, string, unknown]>([
    ["kit", "book.square", { kind: "typed", text: "3 mm" }],
    ["kit", "fit.borderLeaves", { kind: "typed", text: "[10, 10]" }],
    ["kit", "fit.head", { kind: "said", text: "centred" }],
    ["kit", "fit.markStep", { kind: "said", text: "0.5 mm; 1/32 in where the kit’s units are in" }],
    ["kit", "credit", { kind: "none" }],
    ["kit", "rates.part", { kind: "typed", text: "420" }],
    ["kit", "fit.height", { kind: "required" }],
    ["books", "borderBefore", { kind: "said", text: "as the kit has it" }],
    ["settings", "title", { kind: "typed", text: "Leaflight" }],
  ])("%s: %s left out", (name, path, usual) => {
    expect(rowsOf(name).find((row) => row.path === path)!.usual).toEqual(usual);
  });

  it.each<[ReferenceName, string, unknown]>([
    ["kit", "book.leafHeight", [{ kind: "length", least: 40, most: 600 }]],
    [
      "kit",
      "fit.height",
      [
        { kind: "words", words: ["solve"] },
        { kind: "length", least: 5, most: 600 },
      ],
    ],
    ["kit", "versions[].date", [{ kind: "day" }]],
    ["kit", "links[].url", [{ kind: "address" }]],
    ["kit", "levels[].background", [{ kind: "flag" }]],
    ["kit", "levels", [{ kind: "list", least: 2, most: 9, of: [{ kind: "keys" }] }]],
    ["cautions", "when", [{ kind: "words", words: ["always", "cuts", "glue", "light"] }]],
  ])("%s: %s allowed", (name, path, allowed) => {
    expect(rowsOf(name).find((row) => row.path === path)!.allowed).toEqual(allowed);
  });
});
