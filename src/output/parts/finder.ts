import { ASKED, type Asked } from "../../core/finder/book-figures.ts";
import { FITS, KNIVES, LIGHTS, SORTS } from "../../core/finder/query.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";
import type { Field } from "../../core/refit/field.ts";
import { bookFields } from "../../core/refit/fields.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { fieldHelp, fieldLabel, optionText } from "../../words/fields.ts";
import * as say from "../../words/messages.ts";
import { type Html, html } from "./markup.ts";

/** What the finder stands on: the catalogue, or the page of a class that measures in some units. */
export interface FinderPlace {
  readonly kind: "catalogue" | "class";
  readonly units: UnitSystem;
}

/** How many levels a kit may have. */
const LEVELS = Array.from({ length: BOUNDS.levels.most - BOUNDS.levels.least + 1 }, (_, i) => BOUNDS.levels.least + i);

/** The finder above cards of kits. Hidden until its script runs: without it the cards are the plain list. */
export function finderPart({ kind, units }: FinderPlace): Html {
  const ofClass = kind === "class";
  return html`<details class="finder" data-finder${ofClass && html` open`} hidden>
<summary>${ofClass ? say.finderSummaryClass() : say.finderSummaryKits()}</summary>
<form class="refit" data-finder-form novalidate>
<p>${say.finderLead({ page: kind })}</p>
<p class="refit-buttons"><button type="button" class="strong" data-measure>${say.measureStart()}</button></p>
<fieldset><legend>${say.finderBook()}</legend>
${unitsAsked(units)}
<div class="fields">
${bookFields()
  .filter(({ name }) => ofClass || ASKED.includes(name as Asked))
  .map(bookField)}
</div>
<p class="refit-buttons"><button type="button" data-finder-kept hidden>${say.finderUseSaved()}</button> <button type="button" data-finder-keep hidden>${say.finderRemember()}</button></p>
</fieldset>
<fieldset${ofClass && html` hidden`}><legend>${say.finderWork()}</legend>
<div class="fields finder-wishes">
${wishes()}
</div></fieldset>
<p class="refit-buttons"><button type="reset">${say.finderStartAgain()}</button></p>
</form>
</details>
<div class="finder-result" role="status" aria-live="polite" data-finder-result></div>
<p class="finder-more" data-finder-more hidden><button type="button"></button></p>
<div class="empty" data-finder-empty hidden><p>${say.finderEmpty()}</p><p class="refit-buttons"><button type="button" data-finder-wishes>${say.finderClearChoices()}</button> <button type="button" data-finder-all>${say.finderShowAll()}</button></p></div>`;
}

function unitsAsked(units: UnitSystem): Html {
  const choice = (value: UnitSystem, words: string): Html =>
    html`<label><input type="radio" name="units" id="units-${value}" value="${value}"${value === units && html` checked`} aria-describedby="finder-units"> ${words}</label>`;
  return html`<div class="units finder-units"><span id="finder-units">${say.finderUnits()}</span>
${choice("mm", say.finderMillimetres())}
${choice("in", say.finderInches())}</div>`;
}

function bookField(field: Field): Html {
  const { name } = field;
  return html`<div class="field"><label for="find-${name}">${fieldLabel(field, { levels: [] })}</label>${asked(field)}<p class="help" id="find-${name}-help">${fieldHelp(field)}</p></div>
`;
}

function asked(field: Field): Html {
  const { name } = field;
  if (field.form === "choice") {
    const options = field.options.map((option) => html`<option value="${option}">${optionText(option)}</option>`);
    return html`<select id="find-${name}" name="${name}" aria-describedby="find-${name}-help">${options}</select>`;
  }
  const keys = field.form === "count" ? "numeric" : "text";
  return html`<input id="find-${name}" name="${name}" inputmode="${keys}" autocomplete="off"${name !== "plates" && html` placeholder="${say.measureHintEach()}"`} aria-describedby="find-${name}-help">`;
}

function wishes(): Html {
  return html`<div class="field"><label for="find-hours">${say.finderHours()}</label><input id="find-hours" name="hours" inputmode="decimal" autocomplete="off" aria-describedby="find-hours-help"><p class="help" id="find-hours-help">${say.finderHoursHelp()}</p></div>
${wish(
  "levels",
  say.finderLevels(),
  say.finderLevelsAny(),
  LEVELS.map((count) => [String(count), String(count)]),
)}
${wish(
  "light",
  say.finderLight(),
  say.finderLightAny(),
  LIGHTS.map((light) => [light, lightWords(light)]),
)}
${wish(
  "knife",
  say.finderKnife(),
  say.finderKnifeAny(),
  KNIVES.map((knife) => [knife, knifeWords(knife)]),
  say.finderKnifeHelp(),
)}
${wish(
  "fit",
  say.finderFit(),
  say.finderFitAny(),
  FITS.map((fit) => [fit, fitWords(fit)]),
  say.finderFitHelp(),
)}
${wish(
  "sort",
  say.finderOrder(),
  say.finderOrderBest(),
  SORTS.map((sort) => [sort, sortWords(sort)]),
)}`;
}

/** A choice whose first option, `any`, asks for nothing. */
function wish(
  name: string,
  label: string,
  any: string,
  options: readonly (readonly [value: string, words: string])[],
  help?: string,
): Html {
  const described = help !== undefined && html` aria-describedby="find-${name}-help"`;
  return html`<div class="field"><label for="find-${name}">${label}</label><select id="find-${name}" name="${name}"${described}><option value="">${any}</option>${options.map(([value, words]) => html`<option value="${value}">${words}</option>`)}</select>${help !== undefined && html`<p class="help" id="find-${name}-help">${help}</p>`}</div>`;
}

function lightWords(light: (typeof LIGHTS)[number]): string {
  return light === "with" ? say.finderLightWith() : say.finderLightWithout();
}

function knifeWords(knife: (typeof KNIVES)[number]): string {
  return knife === "without" ? say.finderKnifeWithout() : say.finderKnifeMade();
}

function fitWords(fit: (typeof FITS)[number]): string {
  return fit === "change" ? say.finderFitChange() : say.finderFitOwn();
}

function sortWords(sort: (typeof SORTS)[number]): string {
  if (sort === "title") return say.finderOrderTitle();
  return sort === "hours" ? say.finderOrderHours() : say.finderOrderFit();
}
