import { progressKey } from "../../core/bench/fit-key.ts";
import type { Progress } from "../../core/bench/progress.ts";
import type { ProgressFailure } from "../../core/bench/progress-failure.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { parseProgress, serialiseProgress } from "../../input/progress/progress-file.ts";

/** The key that the kit pages keep the reader's units under. */
const UNITS_KEY = "leaflight-units";

/** What was found for a kit and fit. `broken` is why something that is kept cannot be read. */
export interface Kept {
  readonly progress: Progress | undefined;
  readonly broken: ProgressFailure | undefined;
}

export function keptProgress(wanted: Pick<Progress, "kit" | "fit">): Kept {
  const text = read(progressKey(wanted.kit, wanted.fit));
  if (text === undefined) return { progress: undefined, broken: undefined };
  const kept = parseProgress(text, wanted);
  return "failure" in kept
    ? { progress: undefined, broken: kept.failure }
    : { progress: kept.progress, broken: undefined };
}

/** Keeps progress in this browser; says whether it could. */
export function keepProgress(progress: Progress): boolean {
  return write(progressKey(progress.kit, progress.fit), serialiseProgress(progress));
}

/** Another tab of this kit and fit may go on with the work: tells what it keeps. */
export function followProgress(wanted: Pick<Progress, "kit" | "fit">, follow: (progress: Progress) => void): void {
  window.addEventListener("storage", () => {
    const { progress } = keptProgress(wanted);
    if (progress) follow(progress);
  });
}

export function keptUnits(): UnitSystem | undefined {
  const units = read(UNITS_KEY);
  return units === "mm" || units === "in" ? units : undefined;
}

export function keepUnits(units: UnitSystem): void {
  write(UNITS_KEY, units);
}

/** A small choice of the reader's, such as whether the screen stays on. */
export function keptChoice(name: string): string | undefined {
  return read(`leaflight-${name}`);
}

export function keepChoice(name: string, value: string): void {
  write(`leaflight-${name}`, value);
}

function read(key: string): string | undefined {
  try {
    return localStorage.getItem(key) ?? undefined;
  } catch {
    return undefined;
  }
}

function write(key: string, text: string): boolean {
  try {
    localStorage.setItem(key, text);
    return true;
  } catch {
    return false;
  }
}
