import { z } from "zod";
import type { Measure } from "../../core/guide/reference.ts";

/** What a field's schema says beside its type and description, for the guide's tables. */
export interface FieldFacts {
  /** What the field is for, without what is allowed. */
  readonly about?: () => string;
  /** What a number counts; a length has its bounds in mm. */
  readonly measure?: Measure;
  readonly least?: number;
  readonly most?: number;
  /** Where people read a text: on pages alone, or in packets, too. The name of a file or a reference is read by nobody. */
  readonly prose?: "page" | "packet";
  /** What holds where the field is left out and the schema states no value for it. */
  readonly usual?: () => string;
}

export const FACTS = z.registry<FieldFacts>();

/** What a field is for: without what is allowed where that is said apart. */
export function aboutOf(schema: z.core.$ZodType): string | undefined {
  return FACTS.get(schema)?.about?.() ?? z.globalRegistry.get(schema)?.description;
}
