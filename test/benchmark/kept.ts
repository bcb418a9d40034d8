import { execFileSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { cpus } from "node:os";
import { join } from "node:path";
import type { Figure } from "./figure.ts";
import { LINES } from "./lines.ts";

/** Figures that were accepted, and what they were measured on. */
export interface Kept {
  readonly machine: string;
  /** Day of the newest change that was measured, as its commit says. */
  readonly day: string;
  readonly figures: readonly Figure[];
}

export const KEPT_FILE = join(import.meta.dirname, "kept.json");

/** @throws Error where none were ever accepted */
export function readKept(): Kept {
  const { figures, ...rest } = JSON.parse(readFileSync(KEPT_FILE, "utf8"));
  // JSON has no number for what did not end.
  return { ...rest, figures: figures.map((one: Figure) => ({ ...one, value: one.value ?? Number.POSITIVE_INFINITY })) };
}

/** Accepts figures in the place of the kept ones of the same lines; lines that are no more go. */
export function keep(figures: readonly Figure[]): Kept {
  const before = existsSync(KEPT_FILE) ? readKept().figures : [];
  const own = new Map([...before, ...figures].map((figure) => [figure.line, rounded(figure)]));
  const kept = { machine: machine(), day: day(), figures: [...own.values()].filter(({ line }) => line in LINES) };
  writeFileSync(KEPT_FILE, `${JSON.stringify(kept, undefined, 2)}\n`);
  return kept;
}

/** Four digits are more than a run is true to. */
function rounded({ line, value, yardstick }: Figure): Figure {
  const short = (number: number): number => Number(number.toPrecision(4));
  return { line, value: short(value), ...(yardstick === undefined ? {} : { yardstick: short(yardstick) }) };
}

function machine(): string {
  const all = cpus();
  return `${all.length} cores of ${all[0]?.model.trim() ?? "an unknown processor"}`;
}

function day(): string {
  return execFileSync("git", ["log", "-1", "--format=%cs"], { cwd: import.meta.dirname, encoding: "utf8" }).trim();
}
