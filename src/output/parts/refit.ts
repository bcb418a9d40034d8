import * as say from "../../words/messages.ts";
import type { KitViewBase } from "../views/kit-view.ts";
import { type RefitField, type RefitGroup, refitGroups } from "../views/refit-groups.ts";
import { type Html, html, raw } from "./markup.ts";
import { measurePart } from "./measure.ts";

/** The fit panel, in which a reader states her own book. It is hidden until its script runs. */
export function refitForm(view: Pick<KitViewBase, "kit" | "measuring">): Html {
  return html`<form class="refit" data-refit-panel hidden novalidate>
<p>${say.kitRefitText()}</p>
<p class="refit-buttons"><button type="button" class="strong" data-measure>${say.measureStart()}</button></p>
<figure class="measure" data-part="measure">${measurePart(view)}</figure>
${refitGroups(view.kit).map((group, i) => (i === 0 ? fieldset(group) : folded(group)))}
<div class="refit-state" role="status" aria-live="polite" tabindex="0" data-refit-state></div>
<p class="refit-buttons"><button type="button" data-refit-match hidden>${say.kitRefitMatch()}</button> <button type="button" data-refit-keep hidden>${say.kitRefitKeep()}</button> <button type="button" data-refit-kept hidden>${say.kitRefitKept()}</button> <button type="reset" data-refit-reset>${say.kitRefitReset()}</button></p>
</form>`;
}

/** What is asked less often stands closed. */
function folded(group: RefitGroup): Html {
  return html`
<details class="more-fields"><summary>${group.title}</summary>${fieldset(group, "sr")}</details>`;
}

function fieldset({ title, fields }: RefitGroup, seen = ""): Html {
  return html`
<fieldset><legend${seen !== "" && html` class="${seen}"`}>${title}</legend>
<div class="fields">${fields.map(
    (field) => html`
<div class="field${field.cutOnly && " cut-only"}"><label for="fit-${field.name}">${field.label}</label>${control(field)}
<p class="help" id="fit-${field.name}-help">${field.help}</p></div>`,
  )}
</div></fieldset>`;
}

function control({ name, options, value, keys, hint }: RefitField): Html {
  const asked = html`id="fit-${name}" name="${name}"`;
  const help = html`aria-describedby="fit-${name}-help"`;
  if (!options)
    return html`<input ${asked} value="${value}" inputmode="${keys}" autocomplete="off"${hint !== undefined && html` placeholder="${hint}"`} ${help}>`;
  const choices = options.map(
    (option) =>
      html`<option value="${option.value}"${option.value === value && raw(" selected")}>${option.label}</option>`,
  );
  return html`<select ${asked} ${help}>${choices}</select>`;
}
