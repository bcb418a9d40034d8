import {
  inchDenominator,
  type LengthStyle,
  MM_PER_INCH,
  roundTo,
  stepFor,
  tidy,
  type UnitSystem,
} from "../core/units/length.ts";
import { rulerStep } from "../core/units/ruler.ts";
import { decimal } from "./numbers.ts";

/** Lengths as people read them: millimetres inside, text in the language's own writing outside. */

/** Writes a length without its unit: `46.5`, or in inches `1 13/16`. */
export function formatNumber(mm: number, style: LengthStyle): string {
  if (style.units === "mm") return decimal((roundTo(mm, style.step) + 0).toFixed(decimalsOf(style.step)));
  const denominator = inchDenominator(style.step);
  const parts = Math.round((Math.abs(mm) / MM_PER_INCH) * denominator);
  const sign = mm < 0 && parts > 0 ? "−" : "";
  const whole = Math.floor(parts / denominator);
  const rest = parts % denominator;
  if (rest === 0) return `${sign}${whole}`;
  const divisor = greatestCommonDivisor(rest, denominator);
  const fraction = `${rest / divisor}/${denominator / divisor}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole} ${fraction}`;
}

/** Writes a length with its unit: `46.5 mm`, `1 13/16 in`. The space before the unit does not break. */
export function formatLength(mm: number, style: LengthStyle): string {
  return `${formatNumber(mm, style)}\u00a0${style.units}`;
}

/** How a unit system writes marks that were made at a step. */
export function styleFor(units: UnitSystem, step: number): LengthStyle {
  return { units, step: stepFor(units, step) };
}

/** Writes a depth or other length that is no mark: as many decimals as it needs, at most one; inches to the nearest 1/32. */
export function formatDepth(mm: number, units: UnitSystem): string {
  return units === "mm" ? decimal(String(Number(mm.toFixed(1)))) : formatNumber(mm, { units, step: MM_PER_INCH / 32 });
}

/** `formatDepth` with its unit: `26 mm`, `1 1/32 in`. */
export function formatSize(mm: number, units: UnitSystem): string {
  return `${formatDepth(mm, units)}\u00a0${units}`;
}

/** A length that hands lay a ruler to or cut from a roll, with its unit: whole millimetres, or sixteenths of an inch. */
export function formatByHand(mm: number, units: UnitSystem): string {
  return formatLength(mm, { units, step: rulerStep(units, "plain") });
}

/** A length that is found on a ruler, with its unit: half millimetres or 1/32 in, without needless zeros. */
export function formatOnRuler(mm: number, units: UnitSystem): string {
  return formatSize(roundTo(mm, rulerStep(units, "fine")), units);
}

/**
 * A length in a message, written as people type it: `46.5 mm`, `1 13/16 in`. A bound is rounded to its safe side, to a
 * step of the ruler: `floor` for the most, `ceil` for the least.
 */
export function sayLength(mm: number, units: UnitSystem, bound?: "floor" | "ceil", decimals = 1): string {
  const step = units === "mm" ? 10 ** -decimals : MM_PER_INCH / 32;
  const dust = bound === "floor" ? 1e-6 : -1e-6;
  const value = bound ? Math[bound](mm / step + dust) * step : mm;
  return units === "mm"
    ? `${decimal(String(tidy(value, decimals)))} mm`
    : formatSize(value, "in").replace("\u00a0", " ");
}

function decimalsOf(step: number): number {
  for (let decimals = 0; decimals < 3; decimals += 1) {
    if (Math.abs(step * 10 ** decimals - Math.round(step * 10 ** decimals)) < 1e-6) return decimals;
  }
  return 2;
}

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
