import { MM_PER_INCH, tidy, type UnitSystem } from "./length.ts";

/** A line of a ruler. */
export interface Graduation {
  /** From the ruler's beginning, mm. */
  readonly at: number;
  /** 0 for the longest lines, at whole centimetres or inches; each higher rank is shorter. */
  readonly rank: number;
}

/** How fine each rank is: ten and five millimetres, one and a half; whole inches to thirty-seconds. */
const RANKS: Readonly<Record<UnitSystem, readonly number[]>> = {
  mm: [10, 5, 1, 0.5],
  in: [1, 2, 4, 8, 16, 32].map((part) => MM_PER_INCH / part),
};

/** The lines of a ruler between two lengths, where its finest are `step` apart. All mm. */
export function graduations(units: UnitSystem, step: number, from: number, to: number): Graduation[] {
  const first = Math.max(0, Math.ceil(from / step - 1e-6));
  const last = Math.floor(to / step + 1e-6);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => {
    const at = tidy((first + i) * step);
    return { at, rank: RANKS[units].findIndex((rank) => isMultiple(at, rank)) };
  });
}

/** Where a length lies on a ruler: on a line, where both are the same, or between two. All mm. */
export function linesAt(at: number, step: number): { readonly below: number; readonly above: number } {
  if (isMultiple(at, step)) return { below: at, above: at };
  const below = Math.floor(at / step) * step;
  return { below: tidy(below), above: tidy(below + step) };
}

function isMultiple(at: number, step: number): boolean {
  return Math.abs(at - Math.round(at / step) * step) < 1e-3;
}
