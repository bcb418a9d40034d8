import type { Kit } from "../../core/kit/kit.ts";
import { fieldsOf } from "../../core/refit/fields.ts";
import { type Refit, refitKit } from "../../core/refit/refit.ts";
import { faultText, fieldText } from "../../words/fields.ts";
import type { KitData } from "../shared/kit-data.ts";
import { type Control, markControl } from "../shared/marked-control.ts";
import { readTexts } from "./panel-texts.ts";

/** Reads the fields that the reader has touched; `shown` is what the panel was last written for. Wrong texts are marked and left out. */
export function readPanel(
  form: HTMLFormElement,
  { kit }: KitData,
  { touched, shown }: { readonly touched: ReadonlySet<string>; readonly shown: Refit },
): Refit {
  const controlOf = (name: string) => (touched.has(name) ? (form.elements.namedItem(name) as Control | null) : null);
  const { refit, read } = readTexts(kit, (name) => controlOf(name)?.value, refitKit(kit, shown));
  for (const { field, fault } of read) markControl(controlOf(field.name)!, fault && faultText(fault, kit.units));
  return refit;
}

/** Writes what the fitted kit says into every field but those that are being written or wrong. */
export function writePanel(form: HTMLFormElement, kit: Kit, keep: ReadonlySet<string>): void {
  for (const field of fieldsOf(kit)) {
    const control = form.elements.namedItem(field.name) as Control | null;
    if (!control || keep.has(field.name)) continue;
    const text = fieldText(field, kit);
    if (control.value !== text) control.value = text;
    markControl(control, undefined);
  }
}

/** Names of the fields that a refit changes. */
export function touchedBy(data: KitData, refit: Refit): Set<string> {
  const fitted = refitKit(data.kit, refit);
  return new Set(
    fieldsOf(data.kit)
      .filter((field) => field.name in refit || fieldText(field, data.kit) !== fieldText(field, fitted))
      .map((field) => field.name),
  );
}
