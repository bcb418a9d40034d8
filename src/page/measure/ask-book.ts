import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { measuringPart } from "../../output/parts/measuring.ts";
import * as say from "../../words/messages.ts";
import { MeasureDialog } from "./measure-dialog.ts";

/** Asks for a book in a dialog; undefined where she leaves it. Bare lengths are in `units`; what stands in `form` is shown in empty fields. */
export function askBook(units: UnitSystem, form: HTMLFormElement): Promise<Refit | undefined> {
  const dialog = document.createElement("dialog");
  dialog.className = "measure-dialog";
  dialog.setAttribute("aria-labelledby", "measure-title");
  dialog.innerHTML = String(measuringPart(units, (name) => hintOf(form.elements.namedItem(name))));
  document.body.append(dialog);
  return new Promise((resolve) => {
    const asked = new MeasureDialog(dialog, units);
    dialog.addEventListener("close", () => {
      dialog.remove();
      resolve(asked.result);
    });
    dialog.showModal();
    asked.start();
  });
}

/** What stands in a form's field: the kit's own figure, or what was stated before. */
function hintOf(control: Element | RadioNodeList | null): string {
  if (!(control instanceof HTMLInputElement) || control.value === "") return "";
  const { value: figure, defaultValue } = control;
  return figure === defaultValue ? say.measureHintKit({ figure }) : say.measureHintNow({ figure });
}
