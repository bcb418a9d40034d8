import { z } from "zod";
import type { LeafNumber } from "../../core/book/leaf-number.ts";
import { BOUNDS, type Bounds } from "../../core/kit/bounds.ts";
import { LengthError, parseLength, tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { aboutOf, FACTS, type FieldFacts } from "./schema-facts.ts";
import type { SchemaFault } from "./schema-fault.ts";
import { TEXT } from "./text-bounds.ts";

/**
 * Fields that front matters and settings share. What is allowed is said when a message or a JSON Schema asks for it, as there
 * are no words yet when schemas are made. Numbers that authors type stand in it as they are typed, in every language.
 */

/** What a field is for, in a sentence. */
export type About = () => string;

/** A schema's description for `meta`. */
export function described(about: About): { readonly description: string } {
  return {
    get description() {
      return about();
    },
  };
}

/** A length in mm, from a number or a text with a unit. */
export function length(about: About, { least, most }: Bounds<"length">): z.ZodType<number, number | string> {
  const fail = (context: z.core.$RefinementCtx, fault: SchemaFault): void => {
    context.addIssue({ code: "custom", params: { fault } });
  };
  return z
    .union([z.number(), z.string()])
    .transform((value, context) => {
      try {
        const mm = parseLength(value);
        if (mm >= least && mm <= most) return mm;
        fail(context, { kind: "range", length: tidy(mm, 2), least, most });
      } catch (error) {
        if (!(error instanceof LengthError)) throw error;
        fail(context, error.fault);
      }
      return z.NEVER;
    })
    .meta(described(() => say.fieldLength({ about: about(), ...typed(least, most), help: say.fieldLengthHelp() })))
    .register(FACTS, { about, measure: "mm", least, most });
}

/** A whole number. */
export function count(about: About, { least, most }: Bounds<"count">): z.ZodNumber {
  return z
    .number()
    .int()
    .min(least)
    .max(most)
    .meta(described(() => say.fieldCount({ about: about(), ...typed(least, most) })))
    .register(FACTS, { about });
}

/** The number of a leaf in its book. */
export function leaf(about: About): z.ZodType<LeafNumber, number> {
  return count(about, BOUNDS.leaf) as z.ZodType<number, number> as z.ZodType<LeafNumber, number>;
}

/** A number between bounds, inclusive. */
export function number(about: About, least: number, most: number): z.ZodNumber {
  return z
    .number()
    .min(least)
    .max(most)
    .meta(described(() => say.fieldNumber({ about: about(), ...typed(least, most) })))
    .register(FACTS, { about });
}

/** More than any list of supplies needs. */
const MOST_AMOUNT = 1_000_000;

/** How much or how many of something; more than nothing. */
export function amount(about: About): z.ZodNumber {
  return z
    .number()
    .positive()
    .max(MOST_AMOUNT)
    .meta(described(() => say.fieldAmount({ about: about(), most: String(MOST_AMOUNT) })))
    .register(FACTS, { about });
}

/** What something costs. */
export function price(about: About): z.ZodNumber {
  return z
    .number()
    .min(0)
    .max(MOST_AMOUNT)
    .meta(described(() => say.fieldCost({ about: about(), most: String(MOST_AMOUNT) })))
    .register(FACTS, { about });
}

/** A text that is not empty, of at most so many characters, and where people read it. */
export function words(about: About, most: number, prose: FieldFacts["prose"] = "packet"): z.ZodString {
  return z
    .string()
    .trim()
    .min(1)
    .max(most)
    .meta(described(() => say.fieldText({ about: about(), most: String(most) })))
    .register(FACTS, { about, prose });
}

/** The name of a file, of a kit, or of something else that is stated elsewhere: nobody reads it but the program. */
export function reference(about: About): z.ZodString {
  const made = words(about, TEXT.path);
  FACTS.add(made, { about });
  return made;
}

/** Working time for one of something. */
export function seconds(about: About): z.ZodNumber {
  return z
    .number()
    .min(0)
    .max(3600)
    .meta(described(() => say.fieldSeconds({ about: about(), ...typed(0, 3600) })))
    .register(FACTS, { about, measure: "seconds" });
}

/** One of some words. */
export const choice = <const T extends readonly [string, ...string[]]>(about: About, values: T) =>
  z
    .enum(values)
    .meta(described(() => say.fieldChoice({ about: about(), values: values.join(", ") })))
    .register(FACTS, { about });

/** Address on the web. */
export const address = (about: About) =>
  z
    .url({ protocol: /^https?$/ })
    .max(TEXT.address)
    .meta(described(() => say.fieldAddress({ about: about() })))
    .register(FACTS, { about });

/** A list of as many things as may be. */
export function list<T extends z.ZodType>(about: About, of: T, least: number, most: number): z.ZodArray<T> {
  const allowed = (): string =>
    least > 0
      ? say.fieldListBetween({ about: about(), ...typed(least, most) })
      : say.fieldListMost({ about: about(), most: String(most) });
  const made = z.array(of).min(least).max(most).meta(described(allowed));
  FACTS.add(made, { about });
  return made;
}

/** A field that may be left out, and what holds then. */
export function leftOut<T extends z.ZodType>(schema: T, usual: About): z.ZodOptional<T> {
  const about = (): string => aboutOf(schema) ?? "";
  const made = schema
    .optional()
    .meta(described(() => say.fieldLeftOut({ about: schema.description ?? about(), usual: usual() })));
  FACTS.add(made, { about, usual });
  return made;
}

/** Bounds as an author types them. */
function typed(least: number, most: number): { readonly least: string; readonly most: string } {
  return { least: String(least), most: String(most) };
}
