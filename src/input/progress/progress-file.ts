import type { Progress, Tick } from "../../core/bench/progress.ts";
import type { ProgressFailure, ProgressValue } from "../../core/bench/progress-failure.ts";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { headingSchema, PROGRESS_SCHEMA, progressSchema } from "./progress-schema.ts";

/** Progress that was read, or why a text is none that can be used. */
export type ProgressRead = { readonly progress: Progress } | { readonly failure: ProgressFailure };

/** What stands in a message of a value that is too long to be shown whole. */
const SHOWN = 40;

/** Progress as the text of a JSON file. */
export function serialiseProgress(progress: Progress): string {
  const { kit, fit, revision, at, item, passed, measured, glued, sitting, clock } = progress;
  const lost = progress.lost.map((one) => ({ ...one, cleared: one.cleared.map(writeTick) }));
  const ticks = progress.ticks.map(writeTick);
  return `${JSON.stringify({ schema: PROGRESS_SCHEMA, kit, fit, revision, at, item, ticks, passed, lost, measured, glued, sitting, clock })}\n`;
}

/** Reads a text that `serialiseProgress` wrote for this kit and fit. */
export function parseProgress(text: string, wanted: Pick<Progress, "kit" | "fit">): ProgressRead {
  const file = readJson(text);
  if (file === undefined) return { failure: { kind: "not-json" } };
  const heading = headingSchema.safeParse(file);
  if (!heading.success) return { failure: failureOf(heading.error.issues[0]!, file) };
  const { kit, fit } = heading.data;
  if (kit !== wanted.kit) return { failure: { kind: "other-kit", kit, wanted: wanted.kit } };
  const whole = progressSchema.safeParse(file);
  if (!whole.success) return { failure: failureOf(whole.error.issues[0]!, file) };
  if (fit !== wanted.fit) return { failure: { kind: "other-fit", fit } };
  return { progress: { ...whole.data, measured: whole.data.measured } };
}

function writeTick(tick: Tick): [number, number] {
  return [tick.leaf, Math.round(tick.took)];
}

/** Undefined where the text is no JSON, which no JSON text stands for. */
function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

type Issue = NonNullable<ReturnType<typeof progressSchema.safeParse>["error"]>["issues"][number];

function failureOf(issue: Issue, file: unknown): ProgressFailure {
  const given = shown(valueAt(file, issue.path));
  const path = issue.path.map((step) => (typeof step === "number" ? `[${step}]` : `.${String(step)}`)).join("");
  const place = path.replace(/^\./, "");
  if (issue.code === "custom") return { kind: "twice", path: place, leaf: issue.params!["twice"] as LeafNumber };
  if (place === "schema") return { kind: "other-schema", given, expected: JSON.stringify(PROGRESS_SCHEMA) };
  return { kind: "wrong-value", path: place, given, allowed: issue.message as ProgressValue };
}

function valueAt(file: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>((value, step) => (value as Record<PropertyKey, unknown> | undefined)?.[step], file);
}

function shown(value: unknown): string | undefined {
  const text: string | undefined = JSON.stringify(value);
  return text !== undefined && text.length > SHOWN ? `${text.slice(0, SHOWN)}…` : text;
}
