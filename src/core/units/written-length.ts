import { LengthError, parseLength, plainly, type UnitSystem } from "./length.ts";

/**
 * A length as a reader writes it into any field, mm; undefined where it is none. Without a unit it is in hers; it may have a
 * decimal comma, and a fraction after a space, a hyphen or nothing: `21,6 cm`, `7-1/4`, `7¼`, `7 1⁄4”`, `8 inches`.
 */
export function readLength(given: string, units: UnitSystem): number | undefined {
  const text = plainly(given)
    .replace(/^(\d*),(\d+)/, "$1.$2")
    .replace(/^(\d+)\s*[-‐-–]\s*(?=\d+\s*\/)/, "$1 ")
    .replace(/\s*in(\.|ch(es)?)$/i, " in");
  try {
    return parseLength(/\d$/.test(text) ? `${text} ${units}` : text);
  } catch (error) {
    if (error instanceof LengthError) return undefined;
    throw error;
  }
}
