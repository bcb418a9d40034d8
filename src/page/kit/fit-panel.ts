import type { Kit } from "../../core/kit/kit.ts";
import { FieldError, fieldsOf } from "../../core/refit/fields.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import type { KitData } from "../shared/kit-data.ts";
import { type Control, markControl } from "../shared/marked-control.ts";

/** Reads the fields that the reader has touched. Wrong texts are marked and left out. */
export function readPanel(form: HTMLFormElement, data: KitData, touched: ReadonlySet<string>): Refit {
  let refit: Refit = {};
  for (const field of fieldsOf(data.kit)) {
    const control = form.elements.namedItem(field.name) as Control | null;
    if (!control || !touched.has(field.name)) continue;
    const text = control.value;
    try {
      // Other fields may have moved what the kit says here: only what it says now can be left out.
      const fitted = refitKit(data.kit, refit);
      if (text.trim() !== field.write(fitted)) refit = { ...refit, ...field.read(text, fitted) };
      markControl(control, undefined);
    } catch (error) {
      if (!(error instanceof FieldError)) throw error;
      markControl(control, error.message);
    }
  }
  return refit;
}

/** Writes what the fitted kit says into every field but those that are being written or wrong. */
export function writePanel(form: HTMLFormElement, kit: Kit, keep: ReadonlySet<string>): void {
  for (const field of fieldsOf(kit)) {
    const control = form.elements.namedItem(field.name) as Control | null;
    if (!control || keep.has(field.name)) continue;
    control.value = field.write(kit);
    markControl(control, undefined);
  }
}

/** Names of the fields that a refit changes. */
export function touchedBy(data: KitData, refit: Refit): Set<string> {
  const fitted = refitKit(data.kit, refit);
  return new Set(
    fieldsOf(data.kit)
      .filter((field) => field.name in refit || field.write(data.kit) !== field.write(fitted))
      .map((field) => field.name),
  );
}
