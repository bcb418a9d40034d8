import { type LengthStyle, stepFor, type UnitSystem } from "../core/units/length.ts";
import { formatLength, formatSize } from "./lengths.ts";

/** One quantity in both unit systems; the page shows one of them at a time. */
export interface Dual<T = string> {
  readonly mm: T;
  readonly in: T;
}

export function dual<T>(make: (units: UnitSystem) => T): Dual<T> {
  return { mm: make("mm"), in: make("in") };
}

/** A mark or measured length at the kit's step, with unit. */
export function dualLength(mm: number, step: number): Dual {
  return dual((units) => formatLength(mm, styleFor(units, step)));
}

/** A depth or other length that is no mark, with unit. */
export function dualDepth(mm: number): Dual {
  return dual((units) => formatSize(mm, units));
}

/** How a unit system writes marks that were made at a step. */
export function styleFor(units: UnitSystem, step: number): LengthStyle {
  return { units, step: stepFor(units, step) };
}

/** A text that is the same in both. */
export function same(text: string): Dual {
  return { mm: text, in: text };
}

/** A length that hands measure or cut, to the whole millimetre or sixteenth of an inch, with unit: a string, the hold width. */
export function dualByHand(mm: number): Dual {
  return dualLength(mm, 1);
}
