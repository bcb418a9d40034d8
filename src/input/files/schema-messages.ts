import type { z } from "zod";
import * as say from "../../words/messages.ts";
import type { KitMessage } from "./message.ts";
import { nearestName } from "./nearest-name.ts";
import type { Advice } from "./problem.ts";
import { givenWords, type SchemaFault } from "./schema-fault.ts";
import { shortValue } from "./short.ts";
import type { YamlFile } from "./yaml.ts";

type Issue = z.core.$ZodIssue;
/** The parts of a JSON Schema that messages are made from. */
export type JsonSchema = {
  properties?: Record<string, JsonSchema>;
  items?: JsonSchema;
  propertyNames?: { enum?: string[] };
  prefixItems?: JsonSchema[];
  additionalProperties?: JsonSchema | boolean;
  anyOf?: JsonSchema[];
  description?: string;
};

/** What was read, and what its messages need to know of it. */
export interface Checked {
  readonly file: string;
  readonly yaml: YamlFile;
  readonly schema: JsonSchema;
  /** What all of it is called. */
  readonly whole: string;
  /** What is told of an unknown key that is refused for a reason of its own. */
  readonly refused?: (key: string, path: readonly PropertyKey[]) => Advice | undefined;
}

/** As many messages about one file are enough to see what is amiss. */
const MOST_TOLD = 50;

/** Turns what a schema found into one message each, with places and what is allowed by its JSON Schema. */
export function schemaMessages(checked: Checked, found: readonly Issue[]): KitMessage[] {
  const { yaml, schema } = checked;
  const issues = found.flatMap(insideChoice);
  const misspelt = new Set(
    issues.flatMap((issue) =>
      issue.code === "unrecognized_keys"
        ? issue.keys
            .slice(0, MOST_TOLD)
            .map((key) => fieldName([...issue.path, nearestName(key, knownKeys(schema, issue.path)) ?? key]))
        : [],
    ),
  );
  const told = issues.filter(
    (issue) => !(misspelt.has(fieldName(issue.path)) && valueAt(yaml.value, issue.path) === undefined),
  );
  const messages = told.slice(0, MOST_TOLD).flatMap((issue) => {
    if (issue.code !== "unrecognized_keys") return [wrongValue(checked, issue)];
    return issue.keys.slice(0, MOST_TOLD).map((key) => unknownKey(checked, issue.path, key));
  });
  return messages.slice(0, MOST_TOLD);
}

/** Where only one form of a choice is of the kind that was given, what is wrong inside it. */
function insideChoice(issue: Issue): Issue[] {
  if (issue.code !== "invalid_union") return [issue];
  const forms = issue.errors.filter((form) => form.length > 0 && form.every(({ path }) => path.length > 0));
  if (forms.length !== 1) return [issue];
  return forms[0]!.flatMap((inner) => insideChoice({ ...inner, path: [...issue.path, ...inner.path] } as Issue));
}

function wrongValue({ file, yaml, schema, whole }: Checked, issue: Issue): KitMessage {
  const { path } = issue;
  const given = valueAt(yaml.value, path);
  const about = {
    file,
    ...yaml.placeOf(path),
    field: fieldIn(whole, path),
    allowed: (schemaAt(schema, path)?.description ?? issue.message).replace(/\.$/, ""),
  };
  if (given === undefined) return { ...about, given: say.checkNotGiven(), remedy: addRemedy(path, whole) };
  if (typeof given === "string" && issue.code === "too_big")
    return { ...about, given: longWords(given), remedy: say.checkShorten() };
  const value = shortValue(
    typeof given === "number" ? asTyped(given) : JSON.stringify(given, (_, one) => typedNumber(one)),
  );
  return { ...about, given: givenWords(value, faultOf(issue)), remedy: say.checkCorrectValue() };
}

/** Of a text that is too long, what is enough to find it. */
const BEGINNING = 40;

function longWords(text: string): string {
  return say.checkGivenLong({ count: text.length, value: JSON.stringify(`${text.slice(0, BEGINNING)}…`) });
}

/** A number as YAML writes it. */
function asTyped(value: number): string {
  if (Number.isNaN(value)) return ".nan";
  return Number.isFinite(value) ? String(value) : `${value < 0 ? "-" : ""}.inf`;
}

/** A number that JSON does not have, in a value that is shown as JSON. */
function typedNumber(value: unknown): unknown {
  return typeof value === "number" && !Number.isFinite(value) ? asTyped(value) : value;
}

function addRemedy(path: readonly PropertyKey[], whole: string): string {
  const step = path.at(-1);
  if (typeof step !== "number") return say.checkAddField({ field: String(step ?? whole) });
  return say.checkAddEntry({ number: step + 1, list: fieldIn(whole, path.slice(0, -1)) });
}

function unknownKey(checked: Checked, path: readonly PropertyKey[], key: string): KitMessage {
  const { file, yaml, schema, whole } = checked;
  const place = { file, ...yaml.placeOf(path, key), field: fieldIn(whole, [...path, shortValue(key)]) };
  const refused = checked.refused?.(shortValue(key), path);
  if (refused) return { ...place, ...refused };
  const nearest = nearestName(key, knownKeys(schema, path));
  return {
    ...place,
    given: say.checkUnknownKey({ key: shortValue(key) }),
    allowed: knownKeys(schema, path).join(", "),
    remedy: nearest === undefined ? say.checkRemoveKey() : say.checkWriteKey({ key: nearest }),
  };
}

function knownKeys(schema: JsonSchema, path: readonly PropertyKey[]): string[] {
  const at = schemaAt(schema, path);
  const keyed = at?.properties ? at : at?.anyOf?.find((form) => form.properties);
  return keyed?.properties ? Object.keys(keyed.properties) : (at?.propertyNames?.enum ?? []);
}

/** What a check of our own found, also when it stands inside a choice. */
function faultOf(issue: Issue): SchemaFault | undefined {
  if (issue.code === "invalid_union") return issue.errors.flat().map(faultOf).find(Boolean);
  return issue.code === "custom" ? (issue.params?.["fault"] as SchemaFault | undefined) : undefined;
}

function schemaAt(schema: JsonSchema, path: readonly PropertyKey[]): JsonSchema | undefined {
  return path.reduce<JsonSchema | undefined>((at, step) => at && stepIn(at, step), schema);
}

/** What a schema, or the first of its forms that knows the step, says of what stands there. */
function stepIn(schema: JsonSchema, step: PropertyKey): JsonSchema | undefined {
  const extra = typeof schema.additionalProperties === "object" ? schema.additionalProperties : undefined;
  const own =
    typeof step === "number"
      ? (schema.prefixItems?.[step] ?? schema.items)
      : (schema.properties?.[String(step)] ?? extra);
  if (own) return own;
  for (const form of schema.anyOf ?? []) {
    const found = stepIn(form, step);
    if (found) return found;
  }
  return undefined;
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, step) => (at === null || typeof at !== "object" ? undefined : (at as Record<PropertyKey, unknown>)[step]),
    value,
  );
}

/** A field as its message names it; in a list, or for the whole of it, with what all of it is called: `cautions[2].when`. */
export function fieldIn(whole: string, path: readonly PropertyKey[]): string {
  return typeof path[0] === "string" ? fieldName(path) : `${whole}${fieldName(path)}`;
}

/** `levels.1.depth` as people count: `levels[2].depth`. */
export function fieldName(path: readonly PropertyKey[]): string {
  return path
    .map((step, i) => (typeof step === "number" ? `[${step + 1}]` : `${i > 0 ? "." : ""}${String(step)}`))
    .join("");
}
