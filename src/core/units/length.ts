/** Lengths at the border of the program: text in, millimetres inside, text out. */

export type UnitSystem = "mm" | "in";

/** Millimetres in one inch, exact (international inch, 1959). */
export const MM_PER_INCH = 25.4;

const MM_PER_UNIT: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: MM_PER_INCH };

/** What is wrong with something that should be a length. */
export type LengthFault =
  | { readonly kind: "comma" | "no-length" | "no-unit" | "not-finite" | "zero-divisor" }
  | { readonly kind: "other-unit"; readonly unit: string };

/** Why a length could not be read; `given` is the offending value as text. */
export class LengthError extends Error {
  readonly given: string;
  readonly fault: LengthFault;
  constructor(given: string, fault: LengthFault) {
    super(`${given}: ${fault.kind}`);
    this.given = given;
    this.fault = fault;
  }
}

/**
 * Reads a length and gives millimetres.
 * A bare number is millimetres; text needs a unit (mm, cm, in). Fractions are read as people write them: "1 1/2 in".
 * @throws LengthError when the value is neither, or its unit is another one.
 */
export function parseLength(value: unknown): number {
  if (typeof value === "number") {
    if (Number.isFinite(value)) return value;
    throw new LengthError(String(value), { kind: "not-finite" });
  }
  if (typeof value !== "string") throw new LengthError(JSON.stringify(value) ?? String(value), { kind: "no-length" });
  const text = plainly(value);
  const match = /^(-?)(?:(\d+)\s+)?(?:(\d+)\s*\/\s*(\d+)|(\d*\.?\d+))\s*([^\d\s./].*)?$/.exec(text);
  if (!match) throw new LengthError(value, { kind: "no-length" });
  if (match[6]?.startsWith(",")) throw new LengthError(value, { kind: "comma" });
  const [, sign, whole, numerator, denominator, decimal, unit] = match;
  if (decimal !== undefined && whole !== undefined) throw new LengthError(value, { kind: "no-length" });
  if (denominator !== undefined && Number(denominator) === 0) throw new LengthError(value, { kind: "zero-divisor" });
  if (unit === undefined) throw new LengthError(value, { kind: "no-unit" });
  const factor = MM_PER_UNIT[unit.toLowerCase()];
  if (factor === undefined) throw new LengthError(value, { kind: "other-unit", unit });
  const amount = decimal === undefined ? Number(whole ?? 0) + Number(numerator) / Number(denominator) : Number(decimal);
  return tidy((sign === "-" ? -1 : 1) * amount * factor, 11);
}

/**
 * A text with its fractions in plain figures and a stroke, `7¼` and `7 ¹⁄₄` as `7 1/4` (Unicode's compatibility forms), and
 * what phones and typists write for the inch mark as `in`.
 */
export function plainly(text: string): string {
  return text
    .replace(/(\d)\s*([¼-¾⅐-⅞¹²³⁰-⁹])/, "$1 $2")
    .normalize("NFKC")
    .trim()
    .replace(/(["“”„]|['’′]{2})$/, " in")
    .replace("\u2044", "/");
}

/** How marks are written: the unit, and the step in millimetres that they are multiples of. */
export interface LengthStyle {
  readonly units: UnitSystem;
  readonly step: number;
}

/** The finest inch fraction that a step calls for: 16 for 1/16 in, otherwise 32. */
export function inchDenominator(step: number): 16 | 32 {
  return Math.abs(step - MM_PER_INCH / 16) < 1e-6 ? 16 : 32;
}

/** The step in the other unit system that is nearest in fineness, in mm. */
export function stepFor(units: UnitSystem, step: number): number {
  const isInch = Math.abs((step * 32) / MM_PER_INCH - Math.round((step * 32) / MM_PER_INCH)) < 1e-6;
  if (units === "in") return isInch ? step : step < 0.9 ? MM_PER_INCH / 32 : MM_PER_INCH / 16;
  return !isInch ? step : step < 1 ? 0.5 : 1;
}

/** Nearest multiple of a step, free of binary dust (kept to 1e-5 mm). A half goes to the greater value. */
export function roundTo(value: number, step: number): number {
  return tidy(Math.round(value / step + 1e-9) * step);
}

/** Powers of ten, as a power is slow to compute. */
const SCALES = Array.from({ length: 16 }, (_, decimals) => 10 ** decimals);

/** So near to the middle of two decimals the product with a power of ten no longer tells which is nearer. */
const UNSURE = 1e-6;

/** From here on a double has no such decimals to tell apart. */
const BEYOND = 1e9;

/** The nearest number with so many decimals, a half going away from 0: `toFixed` as a number, in a tenth of its time. */
export function toDecimals(value: number, decimals: number): number {
  const scale = SCALES[decimals]!;
  const scaled = value * scale;
  const whole = Math.round(scaled);
  const isSure = Math.abs(Math.abs(scaled - whole) - 0.5) > UNSURE && Math.abs(scaled) < BEYOND;
  return isSure ? whole / scale + 0 : Number(value.toFixed(decimals)) + 0;
}

/** Removes binary dust below 1e-5. */
export function tidy(value: number, decimals = 5): number {
  const scale = SCALES[decimals]!;
  return Math.round(value * scale) / scale + 0;
}
