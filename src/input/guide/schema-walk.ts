import type { z } from "zod";
import type { Reference, ReferenceGroup, ReferenceKey, Usual } from "../../core/guide/reference.ts";
import { aboutOf, FACTS } from "../files/schema-facts.ts";
import { allowedBy } from "./allowed.ts";

/** A schema as the library's own union of kinds, which can be told apart. */
export type Schema = z.core.$ZodTypes;

/** What a key holds, without what says whether it may be left out. */
interface Field {
  readonly inner: Schema;
  readonly about: string;
  readonly usual: Usual;
}

/** Where the keys of an object stand: an object that several keys hold stands in the group of the first of them. */
type Groups = Map<z.core.$ZodObject, string>;

/** The keys of a file whose values are checked by a schema, in groups. */
export function walkSchema(schema: z.core.$ZodType, path = ""): Reference {
  const groups: Groups = new Map();
  const held = heldIn(schema, path, groups);
  return held.map(({ path: at, about, shape }): ReferenceGroup => {
    const keys = Object.entries(shape).map(([key, one]) => referenceKey(one, below(at, key), groups));
    return { path: at, about, keys };
  });
}

/** What a table says of one key. */
export function referenceKey(schema: z.core.$ZodType, path: string, groups: Groups = new Map()): ReferenceKey {
  const { inner, about, usual } = fieldOf(schema);
  const held = objectIn(inner);
  const group = held && (groups.get(held) ?? groupPath(inner, path));
  return { path, about, allowed: allowedBy(inner), usual, group };
}

/** An object that keys hold, with the path of its group. */
interface Held {
  readonly path: string;
  readonly about: string;
  readonly shape: z.core.$ZodShape;
}

/** The objects in a schema, each once. */
function heldIn(schema: z.core.$ZodType, path: string, groups: Groups): Held[] {
  const { inner, about } = fieldOf(schema);
  const held = objectIn(inner);
  if (!held || groups.has(held)) return [];
  groups.set(held, path);
  const { shape } = held._zod.def;
  const inside = Object.entries(shape).flatMap(([key, one]) => {
    return heldIn(one, groupPath(fieldOf(one).inner, below(path, key)), groups);
  });
  return [{ path, about, shape }, ...inside];
}

function groupPath(inner: Schema, path: string): string {
  return isList(inner) ? `${path}[]` : path;
}

/** What stands around a type: whether it may be left out, and what it is for. */
function fieldOf(schema: z.core.$ZodType): Field {
  let inner = schema as Schema;
  let about: string | undefined;
  let usual: Usual = { kind: "required" };
  for (;;) {
    about ??= aboutOf(inner);
    const { def } = inner._zod;
    if (def.type === "optional") {
      const said = FACTS.get(inner)?.usual?.();
      usual = said === undefined ? { kind: "none" } : { kind: "said", text: said };
    } else if (def.type === "default" || def.type === "prefault") usual = stated(def.defaultValue, def.innerType);
    else if (def.type === "pipe" && FACTS.get(inner)?.measure === undefined) {
      inner = def.in as Schema;
      continue;
    } else return { inner, about: about ?? "", usual };
    inner = def.innerType as Schema;
  }
}

/** What a schema fills in, as it would be typed. */
function stated(value: unknown, of: z.core.$ZodType): Usual {
  if (typeof value === "object" && value !== null && Object.keys(value).length === 0) return { kind: "none" };
  const unit = FACTS.get(of)?.measure === "mm" ? " mm" : "";
  return {
    kind: "typed",
    text: typeof value === "string" ? value : JSON.stringify(value).replaceAll(",", ", ") + unit,
  };
}

/** The object that a type is, or whose list it is, also as one of several choices. */
function objectIn(schema: Schema): z.core.$ZodObject | undefined {
  const { def } = schema._zod;
  switch (def.type) {
    case "object":
      return schema as z.core.$ZodObject;
    case "array":
      return objectIn(fieldOf(def.element).inner);
    case "union":
      return def.options.map((one) => objectIn(fieldOf(one).inner)).find(Boolean);
    default:
      return undefined;
  }
}

function isList(schema: Schema): boolean {
  return schema._zod.def.type === "array";
}

function below(path: string, key: string): string {
  return path === "" || path === "[]" ? key : `${path}.${key}`;
}
