import * as say from "../../../words/messages.ts";
import { type Html, html, raw } from "../markup.ts";

/** A button that changes something; what it does is named for the page's script. */
export interface DeskButton {
  readonly does: string;
  readonly text: string;
}

/** A row of buttons, below a hint where there is one. */
export function deskButtons(buttons: readonly DeskButton[], hint?: string): Html {
  const row = buttons.map(({ does, text }) => html`<button type="button" data-do="${does}">${text}</button>`);
  return html`${hint !== undefined && html`<p class="hint">${hint}</p>`}<p class="buttons">${row}</p>`;
}

/** A choice of motifs to set on the window: it is set as soon as it is chosen. */
export function motifChoice(shelf: readonly string[]): Html {
  if (shelf.length === 0) return html`<p class="hint">${say.deskKitMotifShelfEmpty()}</p>`;
  const options = shelf.map((name) => html`<option>${name}</option>`);
  return html`<div class="field"><label for="desk-motif-add">${say.deskKitMotifAdd()}</label><select id="desk-motif-add" data-add-motif><option value=""${raw(" selected")}>${say.deskKitMotifChoose()}</option>${options}</select></div>`;
}
