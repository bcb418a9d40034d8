import type { Notch } from "./light.ts";

/** A notch as it is marked with a ruler: rounded outward to the step, so that the light keeps its clearance. */
export function notchMarks({ from, to, depth }: Notch, step: number): Pick<Notch, "from" | "to" | "depth"> {
  const up = (mm: number): number => Math.ceil(mm / step - 1e-6) * step;
  return { from: Math.floor(from / step + 1e-6) * step, to: up(to), depth: up(depth) };
}
