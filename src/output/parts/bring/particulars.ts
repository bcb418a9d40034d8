import type { LightAnswer } from "../../../core/beginning/answers.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { type Html, html, raw } from "../markup.ts";
import { choices, type TypedField, typed } from "./controls.ts";

/** Title, folder and whether it is a draft. */
export function namesPart(title: string, slug: string, isDraft: boolean): Html {
  return html`<div class="fields wide">${typed({ name: "title", label: say.deskNewKitTitle(), value: title, most: 120 })}
${typed({ name: "slug", label: say.deskNewSlug(), value: slug, most: 100 })}</div>
<p><label class="bring-check"><input type="checkbox" data-draft${isDraft && raw(" checked")}> ${say.deskNewDraft()}</label></p>`;
}

/** A book’s figures in the chosen units. */
export function bookPart(fields: readonly TypedField[], units: UnitSystem): Html {
  return html`<form novalidate>${choices(
    "units",
    say.finderUnits(),
    [
      { value: "mm", label: say.finderMillimetres() },
      { value: "in", label: say.finderInches() },
    ],
    { chosen: units },
  )}
<div class="fields">${fields.map(typed)}</div>
<p class="buttons"><button type="button" data-measure>${say.deskNewBookMeasure()}</button> <button type="button" data-usual-book>${say.deskNewBookUsual()}</button></p></form>`;
}

/** A light, or none. */
export function lampPart(light: LightAnswer | undefined, units: UnitSystem): Html {
  const length = (name: string, label: string, mm: number): Html =>
    typed({ name, label, value: formatSize(mm, units).replace("\u00a0", " ") });
  return html`<p><label class="bring-check"><input type="checkbox" data-lit${light !== undefined && raw(" checked")}> ${say.deskNewLampIn()}</label></p>
${light ? html`<div class="fields">${length("light-diameter", say.deskNewLampDiameter(), light.diameter)}${length("light-height", say.deskNewLampHeight(), light.height)}</div>` : html`<p class="hint">${say.deskNewLampNone()}</p>`}`;
}

/** Whether a picture of one level stands before its ground or is sunk into it. */
export function reliefPart(relief: "raised" | "hollow"): Html {
  return choices(
    "relief",
    say.deskNewRelief(),
    [
      { value: "raised", label: say.deskNewReliefRaised() },
      { value: "hollow", label: say.deskNewReliefHollow() },
    ],
    { chosen: relief },
  );
}
