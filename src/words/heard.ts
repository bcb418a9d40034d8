import { type LengthStyle, MM_PER_INCH } from "../core/units/length.ts";
import { formatNumber } from "./lengths.ts";
import * as say from "./messages.ts";

/** Inches are told to this part. */
const FINEST = 32;

/** A length without its unit as a voice says it: `40`, `56.5`, in inches `1 and 13 sixteenths`. */
export function heardLength(mm: number, style: LengthStyle): string {
  if (style.units === "mm") return formatNumber(mm, { ...style, step: wholeStep(mm, style.step) });
  const parts = Math.round((mm / MM_PER_INCH) * FINEST);
  const [whole, rest] = [Math.floor(parts / FINEST), parts % FINEST];
  if (rest === 0) return String(whole);
  const shared = commonPart(rest);
  const fraction = say.benchHeardFraction({ parts: rest / shared, divisor: FINEST / shared });
  return whole === 0 ? fraction : say.benchHeardInches({ whole, fraction });
}

/** A whole number is told without a nought behind it. */
function wholeStep(mm: number, step: number): number {
  return Math.abs(mm - Math.round(mm)) < 1e-3 ? 1 : step;
}

/** The greatest power of two in a number of parts. */
function commonPart(parts: number): number {
  return parts & -parts;
}
