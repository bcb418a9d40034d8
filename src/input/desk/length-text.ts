import { LengthError, MM_PER_INCH, parseLength, plainly, tidy, type UnitSystem } from "../../core/units/length.ts";
import type { YamlValue } from "./yaml-value.ts";

/** Parts of an inch that rulers have, the coarsest first. */
const PARTS = [1, 2, 4, 8, 16, 32, 64] as const;

/**
 * A length as it is written in the place of another one: in the unit and in the way of that one (`8mm`, `"1/4 in"`), or in
 * the kit's units where there was no length. Millimetres keep four decimals, inches are parts that rulers have, or four decimals.
 */
export function lengthValue(mm: number, was: YamlValue | undefined, units: UnitSystem): string | number {
  if (isLength(was) && Math.abs(parseLength(was) - mm) < 1e-9) return was;
  if (typeof was === "number") return tidy(mm, 4);
  const written = isLength(was) ? /^(.*\d)(\s*)([^\d\s].*)$/.exec(plainly(String(was))) : null;
  if (!written) return units === "mm" ? tidy(mm, 4) : `${inches(mm)} in`;
  const [, amount, space, unit] = written as unknown as [string, string, string, string];
  return `${amountIn(unit, mm, amount)}${space}${unit}`;
}

function isLength(value: YamlValue | undefined): value is string | number {
  try {
    parseLength(value);
    return true;
  } catch (error) {
    if (error instanceof LengthError) return false;
    throw error;
  }
}

function amountIn(unit: string, mm: number, was: string): string {
  switch (unit.toLowerCase()) {
    case "mm":
      return decimal(tidy(mm, 4), was);
    case "cm":
      return decimal(tidy(mm / 10, 5), was);
    default:
      return was.includes(".") ? decimal(tidy(mm / MM_PER_INCH, 4), was) : inches(mm);
  }
}

/** A number with as many decimals as the one before it where that ended with 0. */
function decimal(value: number, was: string): string {
  const padded = /\.(\d*0)$/.exec(was)?.[1]?.length ?? 0;
  return String(value).length < value.toFixed(padded).length ? value.toFixed(padded) : String(value);
}

/** Inches as people write them: `8 1/4`, or with decimals where no ruler has that part. */
function inches(mm: number): string {
  const amount = Math.abs(mm) / MM_PER_INCH;
  const sign = mm < 0 ? "-" : "";
  const parts = PARTS.find((one) => Math.abs(amount * one - Math.round(amount * one)) < 1e-6 * one);
  if (parts === undefined) return String(tidy(mm / MM_PER_INCH, 4));
  const all = Math.round(amount * parts);
  const [whole, part] = [Math.floor(all / parts), all % parts];
  if (part === 0) return `${sign}${whole}`;
  return `${sign}${whole === 0 ? "" : `${whole} `}${part}/${parts}`;
}
