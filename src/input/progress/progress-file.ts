import type { Clock, LostLeaf, Measured, Progress, Tick } from "../../core/bench/progress.ts";

/** The schema's name in a progress file; its number grows when old files can no longer be read. */
export const PROGRESS_SCHEMA = "leaflight/progress/1";

/** Why a text is no progress that can be used here. */
export class ProgressError extends Error {
  /** The fit that the text belongs to, where only the fit differs. */
  readonly fit: string | undefined;
  constructor(message: string, fit?: string) {
    super(message);
    this.fit = fit;
  }
}

/** Progress as the text of a JSON file. */
export function serialiseProgress(progress: Progress): string {
  const { kit, fit, revision, at, passed, measured, clock } = progress;
  const lost = progress.lost.map(({ leaf, cleared }) => ({ leaf, cleared: cleared.map(writeTick) }));
  const ticks = progress.ticks.map(writeTick);
  return `${JSON.stringify({ schema: PROGRESS_SCHEMA, kit, fit, revision, at, ticks, passed, lost, measured, clock })}\n`;
}

/** Reads a text that `serialiseProgress` wrote. @throws ProgressError saying what is wrong and where */
export function parseProgress(text: string, wanted: Pick<Progress, "kit" | "fit">): Progress {
  const file = readObject(readJson(text), "the file");
  if (file.schema !== PROGRESS_SCHEMA) {
    throw new ProgressError(
      `it is not a progress file of this version: schema is ${show(file.schema)}, expected "${PROGRESS_SCHEMA}"`,
    );
  }
  const kit = readText(file.kit, "kit");
  const fit = readText(file.fit, "fit");
  if (kit !== wanted.kit) throw new ProgressError(`it belongs to the kit "${kit}", and this is "${wanted.kit}"`);
  const progress = {
    kit,
    fit,
    revision: readText(file.revision, "revision"),
    at: readLeaf(file.at, "at"),
    ticks: readTicks(file.ticks, "ticks"),
    passed: readList(file.passed, "passed").map((one, i) => readText(one, `passed[${i}]`)),
    lost: readLost(file.lost),
    measured: file.measured === undefined ? undefined : readMeasured(file.measured),
    clock: readClock(file.clock),
  };
  if (fit !== wanted.fit) throw new ProgressError("it belongs to this kit on another book or fit", fit);
  return progress;
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new ProgressError("it is not JSON: it may be cut short, or another kind of file");
  }
}

function writeTick(tick: Tick): [number, number] {
  return [tick.leaf, Math.round(tick.took)];
}

function readTicks(value: unknown, place: string): Tick[] {
  const ticks = readList(value, place).map((one, i) => {
    const pair = readList(one, `${place}[${i}]`);
    return { leaf: readLeaf(pair[0], `${place}[${i}][0]`), took: readAmount(pair[1], `${place}[${i}][1]`) };
  });
  ticks.sort((a, b) => a.leaf - b.leaf);
  const twice = ticks.find((tick, i) => ticks[i + 1]?.leaf === tick.leaf);
  if (twice) throw new ProgressError(`${place} has leaf ${twice.leaf} twice`);
  return ticks;
}

function readLost(value: unknown): LostLeaf[] {
  const lost = readList(value, "lost").map((one, i) => {
    const entry = readObject(one, `lost[${i}]`);
    return {
      leaf: readLeaf(entry.leaf, `lost[${i}].leaf`),
      cleared: readTicks(entry.cleared, `lost[${i}].cleared`),
    };
  });
  const twice = lost.find((one, i) => lost.findIndex((other) => other.leaf === one.leaf) !== i);
  if (twice) throw new ProgressError(`lost has leaf ${twice.leaf} twice`);
  return lost;
}

function readMeasured(value: unknown): Measured {
  const entry = readObject(value, "measured");
  const thickness = readAmount(entry.thickness, "measured.thickness");
  if (thickness === 0) throw new ProgressError("measured.thickness is 0, expected a number above 0");
  return { leaves: readLeaf(entry.leaves, "measured.leaves"), thickness };
}

function readClock(value: unknown): Clock {
  const entry = readObject(value, "clock");
  const of = (key: keyof Clock): number => readAmount(entry[key], `clock.${key}`);
  return { worked: of("worked"), seen: of("seen"), ticked: of("ticked") };
}

function readObject(value: unknown, place: string): Record<string, unknown> {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return value as Record<string, unknown>;
  throw new ProgressError(`${place} is ${show(value)}, expected an object`);
}

function readList(value: unknown, place: string): unknown[] {
  if (Array.isArray(value)) return value;
  throw new ProgressError(`${place} is ${show(value)}, expected a list`);
}

function readText(value: unknown, place: string): string {
  if (typeof value === "string") return value;
  throw new ProgressError(`${place} is ${show(value)}, expected text`);
}

function readLeaf(value: unknown, place: string): number {
  if (typeof value === "number" && Number.isInteger(value) && value >= 1 && value <= 5000) return value;
  throw new ProgressError(`${place} is ${show(value)}, expected a whole number from 1 to 5000`);
}

function readAmount(value: unknown, place: string): number {
  if (typeof value === "number" && Number.isFinite(value) && value >= 0) return value;
  throw new ProgressError(`${place} is ${show(value)}, expected a number from 0`);
}

function show(value: unknown): string {
  const text = JSON.stringify(value) ?? "missing";
  return text.length > 40 ? `${text.slice(0, 40)}…` : text;
}
