import type { LengthFault } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";

/** What a schema finds wrong with a value beyond its type: our own checks. Lengths in mm. */
export type SchemaFault =
  | LengthFault
  | { readonly kind: "range"; readonly length: number; readonly least: number; readonly most: number }
  | { readonly kind: "share"; readonly percent: number; readonly least: number; readonly most: number }
  | { readonly kind: "more-than-folder" }
  | { readonly kind: "whole-session" };

/** What was given, as the author wrote it, and what is wrong with it. */
export function givenWords(value: string, fault: SchemaFault | undefined): string {
  if (!fault) return say.checkGiven({ value });
  switch (fault.kind) {
    case "range": {
      const { length, least, most } = fault;
      return say.checkGivenOutside({ value, length: String(length), least: String(least), most: String(most) });
    }
    case "share": {
      const { percent, least, most } = fault;
      return say.checkGivenShare({ value, percent: String(percent), least: String(least), most: String(most) });
    }
    case "other-unit":
      return say.checkGivenUnit({ value, unit: fault.unit });
    default:
      return say.checkGivenFault({ value, fault: fault.kind });
  }
}
