import { z } from "zod";
import { LENGTH_HELP, LengthError, parseLength, tidy } from "../../core/units/length.ts";

/** Fields that front matters share. Descriptions say what is allowed: they appear in messages, in the JSON Schemas and so in editors. */

/** A length in mm, from a number or a text with a unit. Bounds in mm, inclusive. */
export function length(description: string, least: number, most: number): z.ZodType<number, number | string> {
  return z
    .union([z.number(), z.string()])
    .transform((value, context) => {
      try {
        const mm = parseLength(value);
        if (mm >= least && mm <= most) return mm;
        context.addIssue({ code: "custom", message: `is ${tidy(mm, 2)} mm, outside ${least} to ${most} mm` });
      } catch (error) {
        if (!(error instanceof LengthError)) throw error;
        context.addIssue({ code: "custom", message: error.message, params: { allowed: LENGTH_HELP } });
      }
      return z.NEVER;
    })
    .meta({ description: `${description} A length of ${least} to ${most} mm: ${LENGTH_HELP}.` });
}

/** A whole number between bounds, inclusive. */
export function count(description: string, least: number, most: number): z.ZodNumber {
  return z
    .number()
    .int()
    .min(least)
    .max(most)
    .meta({ description: `${description} A whole number, ${least} to ${most}.` });
}

/** A text that is not empty. */
export function words(description: string): z.ZodString {
  return z
    .string()
    .trim()
    .min(1)
    .meta({ description: `${description} Text.` });
}

/** Working time for one of something. */
export function seconds(description: string): z.ZodNumber {
  return z
    .number()
    .min(0)
    .max(3600)
    .meta({ description: `${description} Seconds, 0 to 3600.` });
}

/** One of some words. */
export const choice = <const T extends readonly [string, ...string[]]>(description: string, values: T) =>
  z.enum(values).meta({ description: `${description} One of: ${values.join(", ")}.` });
