import leven from "leven";
import type { z } from "zod";
import type { YamlFile } from "./front-matter.ts";
import type { KitMessage } from "./message.ts";

type Issue = z.core.$ZodIssue;
/** The parts of a JSON Schema that messages are made from. */
export type JsonSchema = {
  properties?: Record<string, JsonSchema>;
  items?: JsonSchema;
  propertyNames?: { enum?: string[] };
  prefixItems?: JsonSchema[];
  additionalProperties?: JsonSchema | boolean;
  description?: string;
};

/** Turns what a schema found into one message each, with places and what is allowed by its JSON Schema. */
export function schemaMessages(
  file: string,
  front: YamlFile,
  issues: readonly Issue[],
  schema: JsonSchema,
): KitMessage[] {
  const misspelt = new Set(
    issues.flatMap((issue) =>
      issue.code === "unrecognized_keys"
        ? issue.keys.map((key) => fieldName([...issue.path, nearestKey(schema, issue.path, key) ?? key]))
        : [],
    ),
  );
  const told = issues.filter(
    (issue) => !(misspelt.has(fieldName(issue.path)) && valueAt(front.value, issue.path) === undefined),
  );
  return told.flatMap((issue) => {
    if (issue.code === "unrecognized_keys")
      return issue.keys.map((key) => unknownKey(file, front, schema, issue.path, key));
    return [wrongValue(file, front, schema, issue)];
  });
}

function wrongValue(file: string, front: YamlFile, schema: JsonSchema, issue: Issue): KitMessage {
  const given = valueAt(front.value, issue.path);
  const detail = given === undefined ? undefined : lengthDetail(issue);
  return {
    file,
    ...front.placeOf(issue.path),
    field: fieldName(issue.path),
    given:
      given === undefined
        ? "not given"
        : `given ${typeof given === "number" ? given : JSON.stringify(given)}${detail ? `, which ${detail}` : ""}`,
    allowed: (schemaAt(schema, issue.path)?.description ?? issue.message).replace(/\.$/, ""),
    remedy: given === undefined ? `add ${String(issue.path.at(-1) ?? "the front matter")}` : "correct this value",
  };
}

function unknownKey(
  file: string,
  front: YamlFile,
  schema: JsonSchema,
  path: readonly PropertyKey[],
  key: string,
): KitMessage {
  const nearest = nearestKey(schema, path, key);
  return {
    file,
    ...front.placeOf(path, key),
    field: fieldName([...path, key]),
    given: `unknown key "${key}"`,
    allowed: knownKeys(schema, path).join(", "),
    remedy: nearest === undefined ? "remove it, or use one of the keys that are allowed" : `write "${nearest}"`,
  };
}

/** The known key that was probably meant, by edit distance; undefined where none is near. */
function nearestKey(schema: JsonSchema, path: readonly PropertyKey[], key: string): string | undefined {
  const nearest = knownKeys(schema, path).toSorted((a, b) => leven(a, key) - leven(b, key))[0];
  return nearest !== undefined && leven(nearest, key) <= Math.max(2, key.length / 3) ? nearest : undefined;
}

function knownKeys(schema: JsonSchema, path: readonly PropertyKey[]): string[] {
  const at = schemaAt(schema, path);
  return at?.properties ? Object.keys(at.properties) : (at?.propertyNames?.enum ?? []);
}

/** What our own length reader said, also when it stands inside a choice. */
function lengthDetail(issue: Issue): string | undefined {
  if (issue.code === "custom") return issue.message;
  if (issue.code !== "invalid_union") return undefined;
  return issue.errors.flat().find((inner) => inner.code === "custom")?.message;
}

function schemaAt(schema: JsonSchema, path: readonly PropertyKey[]): JsonSchema | undefined {
  let at: JsonSchema | undefined = schema;
  for (const step of path) {
    const extra: JsonSchema | undefined =
      typeof at?.additionalProperties === "object" ? at.additionalProperties : undefined;
    at = typeof step === "number" ? (at?.prefixItems?.[step] ?? at?.items) : (at?.properties?.[String(step)] ?? extra);
  }
  return at;
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, step) => (at === null || typeof at !== "object" ? undefined : (at as Record<PropertyKey, unknown>)[step]),
    value,
  );
}

/** `levels.1.depth` as people count: `levels[2].depth`. */
export function fieldName(path: readonly PropertyKey[]): string {
  if (path.length === 0) return "front matter";
  return path
    .map((step, i) => (typeof step === "number" ? `[${step + 1}]` : `${i > 0 ? "." : ""}${String(step)}`))
    .join("");
}
