import { FieldError, fieldsOf } from "../refit/fields.ts";
import { type Refit, refitKit } from "../refit/refit.ts";
import type { KitData } from "./kit-data.ts";

type Control = HTMLInputElement | HTMLSelectElement;

/** Reads the panel: every text that differs from what the kit says is a change. Wrong texts are marked and left out. */
export function readPanel(form: HTMLFormElement, data: KitData): Refit {
  let refit: Refit = {};
  for (const field of fieldsOf(data.kit)) {
    const control = form.elements.namedItem(field.name) as Control | null;
    if (!control) continue;
    const text = control.value;
    try {
      if (text.trim() !== field.write(data.kit)) refit = { ...refit, ...field.read(text, refitKit(data.kit, refit)) };
      mark(control, undefined);
    } catch (error) {
      if (!(error instanceof FieldError)) throw error;
      mark(control, error.message);
    }
  }
  return refit;
}

/** Writes a refit into the panel. */
export function writePanel(form: HTMLFormElement, data: KitData, refit: Refit): void {
  const kit = refitKit(data.kit, refit);
  for (const field of fieldsOf(data.kit)) {
    const control = form.elements.namedItem(field.name) as Control | null;
    if (!control) continue;
    control.value = field.write(kit);
    mark(control, undefined);
  }
}

/** Whether a text in the panel cannot be taken. */
export function hasWrongField(form: HTMLFormElement): boolean {
  return form.querySelector('[aria-invalid="true"]') !== null;
}

function mark(control: Control, allowed: string | undefined): void {
  const help = document.getElementById(`fit-${control.name}-help`);
  control.toggleAttribute("aria-invalid", false);
  if (allowed !== undefined) control.setAttribute("aria-invalid", "true");
  if (help) {
    help.dataset["usual"] ??= help.textContent ?? "";
    help.textContent = allowed === undefined ? help.dataset["usual"]! : `Allowed: ${allowed}.`;
  }
}
