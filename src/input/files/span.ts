import { z } from "zod";
import { LengthError, parseLength, tidy } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "./schema-facts.ts";
import type { SchemaFault } from "./schema-fault.ts";
import { type About, described } from "./schema-fields.ts";

/** A length in the picture's box: in mm, or as a share of a side of the box (1 is all of it). */
export type Span = { readonly mm: number } | { readonly share: number };

/** Of a span: mm, and as a share so many sides of the box. */
export interface SpanBounds {
  readonly least: number;
  readonly most: number;
  readonly mostShare: number;
}

/** Of what must not be nothing: a thousandth of the box. */
const LEAST_SHARE = 0.001;

/** A length that may be a share of the box: 60, "6 cm" or "50 %". */
export function span(about: About, { least, most, mostShare }: SpanBounds): z.ZodType<Span, number | string> {
  return z
    .union([z.number(), z.string()])
    .transform((value, context): Span => {
      const fail = (fault: SchemaFault): Span => {
        context.addIssue({ code: "custom", params: { fault } });
        return z.NEVER;
      };
      try {
        const percent = typeof value === "string" ? /^\s*(-?\d+(?:\.\d+)?)\s*%\s*$/.exec(value)?.[1] : undefined;
        if (percent !== undefined) {
          const share = Number(percent) / 100;
          const lowest = least < 0 ? -mostShare : least > 0 ? LEAST_SHARE : 0;
          return share >= lowest && share <= mostShare ? { share } : fail(outside(share, lowest, mostShare));
        }
        const mm = parseLength(value);
        return mm >= least && mm <= most ? { mm } : fail({ kind: "range", length: tidy(mm, 2), least, most });
      } catch (error) {
        if (!(error instanceof LengthError)) throw error;
        return fail(error.fault);
      }
    })
    .meta(described(() => say.layerSpan({ about: about(), least: String(least), most: String(most) })))
    .register(FACTS, { about, measure: "mm", least, most });
}

function outside(share: number, least: number, most: number): SchemaFault {
  return { kind: "share", percent: tidy(100 * share, 2), least: tidy(100 * least, 2), most: 100 * most };
}

/** A span in mm, along a side of `side` mm. */
export function mmOf(length: Span, side: number): number {
  return "mm" in length ? length.mm : length.share * side;
}
