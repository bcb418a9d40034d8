import type { Progress, Tick } from "../../core/bench/progress.ts";
import type { ProgressFailure } from "../../core/bench/progress-failure.ts";
import { failureOf, readJson } from "./file-fault.ts";
import { headingSchema, PROGRESS_SCHEMA, progressSchema } from "./progress-schema.ts";

/** Progress that was read, or why a text is none that can be used. */
export type ProgressRead = { readonly progress: Progress } | { readonly failure: ProgressFailure };

/** Progress as the text of a JSON file. */
export function serialiseProgress(progress: Progress): string {
  return `${JSON.stringify({ schema: PROGRESS_SCHEMA, ...writeProgress(progress) })}\n`;
}

/** Progress as it stands in JSON. */
export function writeProgress(progress: Progress): object {
  const { kit, fit, revision, at, item, passed, measured, glued, sitting, clock } = progress;
  const lost = progress.lost.map((one) => ({ ...one, cleared: one.cleared.map(writeTick) }));
  const ticks = progress.ticks.map(writeTick);
  return { kit, fit, revision, at, item, ticks, passed, lost, measured, glued, sitting, clock };
}

/** Reads a text that `serialiseProgress` wrote for this kit and fit. */
export function parseProgress(text: string, wanted: Pick<Progress, "kit" | "fit">): ProgressRead {
  const file = readJson(text);
  if (file === undefined) return { failure: { kind: "not-json" } };
  const heading = headingSchema.safeParse(file);
  if (!heading.success) return { failure: failureOf(heading.error.issues[0]!, file, PROGRESS_SCHEMA) };
  const { kit, fit } = heading.data;
  if (kit !== wanted.kit) return { failure: { kind: "other-kit", kit, wanted: wanted.kit } };
  const whole = progressSchema.safeParse(file);
  if (!whole.success) return { failure: failureOf(whole.error.issues[0]!, file, PROGRESS_SCHEMA) };
  if (fit !== wanted.fit) return { failure: { kind: "other-fit", fit } };
  return { progress: { ...whole.data, measured: whole.data.measured } };
}

function writeTick(tick: Tick): [number, number] {
  return [tick.leaf, Math.round(tick.took)];
}
