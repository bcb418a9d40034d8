import type { Kit } from "../../core/kit/kit.ts";
import type { Field } from "../../core/refit/field.ts";
import { fieldsOf } from "../../core/refit/fields.ts";
import { type FieldFault, readField } from "../../core/refit/read-field.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import { fieldText } from "../../words/fields.ts";

/** What the texts of a panel ask for. */
export interface PanelRead {
  readonly refit: Refit;
  /** Every field that was read, with why its text is left out where it cannot be taken. */
  readonly read: readonly { readonly field: Field; readonly fault: FieldFault | undefined }[];
}

/**
 * Reads the texts that stand in a kit's panel, by the names of their fields; a field without one is passed over. A text that says
 * what the panel showed of `before` keeps that figure, which may be finer than its text.
 */
export function readTexts(kit: Kit, textOf: (name: string) => string | undefined, before: Kit = kit): PanelRead {
  let refit: Refit = {};
  const read: { field: Field; fault: FieldFault | undefined }[] = [];
  for (const field of fieldsOf(kit)) {
    const text = textOf(field.name);
    if (text === undefined) continue;
    // Other fields may have moved what the kit says here: only what it says now can be left out.
    const fitted = refitKit(kit, refit);
    const asked = isOwn(field, text.trim(), fitted)
      ? { refit: {} }
      : text.trim() === fieldText(field, before)
        ? { refit: kept(field, before, fitted) }
        : readField(field, text, fitted);
    if ("refit" in asked) refit = { ...refit, ...asked.refit };
    read.push({ field, fault: "fault" in asked ? asked.fault : undefined });
  }
  return { refit, read };
}

/** A field's figure as another kit has it. */
function kept(field: Field, before: Kit, fitted: Kit): Partial<Refit> {
  const take = field.refit as (figure: unknown, kit: Kit) => Partial<Refit>;
  return take(field.figure(before), fitted);
}

/** Whether a text leaves a figure as it is: it says what the kit says, or nothing. Without plates a book has none. */
function isOwn(field: Field, text: string, fitted: Kit): boolean {
  return text === fieldText(field, fitted) || (text === "" && field.form !== "plates");
}
