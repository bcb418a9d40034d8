import type * as z from "zod/mini";
import type { ProgressFailure, ProgressValue } from "../../core/bench/progress-failure.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";

/** What stands in a message of a value that is too long to be shown whole. */
const SHOWN = 40;

/** Undefined where the text is no JSON, which no JSON text stands for. */
export function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** What is wrong in a file by its schema's first issue; `schema` is the name that it should state. */
export function failureOf(issue: z.core.$ZodIssue, file: unknown, schema: string): ProgressFailure {
  const given = shown(valueAt(file, issue.path));
  const path = issue.path.map((step) => (typeof step === "number" ? `[${step}]` : `.${String(step)}`)).join("");
  const place = path.replace(/^\./, "");
  const twice = issue.code === "custom" ? (issue.params?.["twice"] as LeafNumber | undefined) : undefined;
  if (twice !== undefined) return { kind: "twice", path: place, leaf: twice };
  if (place === "schema") return { kind: "other-schema", given, expected: JSON.stringify(schema) };
  return { kind: "wrong-value", path: place, given, allowed: issue.message as ProgressValue };
}

function valueAt(file: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, step) => (value as Record<PropertyKey, unknown> | undefined)?.[step], file);
}

function shown(value: unknown): string | undefined {
  const text: string | undefined = JSON.stringify(value);
  return text !== undefined && text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
}
