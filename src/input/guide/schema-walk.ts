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

/** The keys of a file whose values are checked by a schema, in groups. */
export function walkSchema(schema: z.core.$ZodType, path = ""): Reference {
  const { inner, about } = fieldOf(schema);
  const held = objectIn(inner);
  if (!held) return [];
  const keys = Object.entries(held._zod.def.shape).map(([key, one]) => ({ key, one, at: below(path, key) }));
  const group: ReferenceGroup = { path, about, keys: keys.map(({ one, at }) => referenceKey(one, at)) };
  return [group, ...keys.flatMap(({ one, at }) => walkSchema(one, isList(fieldOf(one).inner) ? `${at}[]` : at))];
}

/** What a table says of one key. */
export function referenceKey(schema: z.core.$ZodType, path: string): ReferenceKey {
  const { inner, about, usual } = fieldOf(schema);
  const group = objectIn(inner) && (isList(inner) ? `${path}[]` : path);
  return { path, about, allowed: allowedBy(inner), usual, group };
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
