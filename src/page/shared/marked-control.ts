import * as say from "../../words/messages.ts";

export type Control = HTMLInputElement | HTMLSelectElement;

/** Marks a control whose text cannot be taken, and says in its help what is allowed; undefined takes the mark away. */
export function markControl(control: Control, allowed: string | undefined): void {
  const help = document.getElementById(control.getAttribute("aria-describedby") ?? "");
  control.toggleAttribute("aria-invalid", false);
  if (allowed !== undefined) control.setAttribute("aria-invalid", "true");
  if (help) {
    help.dataset.usual ??= help.textContent ?? "";
    const text = allowed === undefined ? help.dataset.usual! : say.fitPanelAllowed({ allowed });
    // The same text written again would have the whole panel laid out.
    if (help.textContent !== text) help.textContent = text;
  }
}

/** Whether a text in the form cannot be taken. */
export function hasWrongField(form: HTMLFormElement): boolean {
  return form.querySelector('[aria-invalid="true"]') !== null;
}
