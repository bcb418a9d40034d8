import type { Field } from "../../core/refit/field.ts";
import { bookFields } from "../../core/refit/fields.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import { fieldHelp, fieldLabel } from "../../words/fields.ts";
import * as say from "../../words/messages.ts";
import { lengthStep, pagesStep } from "../drawing/diagrams/measure-step.ts";
import type { Figure } from "../drawing/figure.ts";
import { type Html, html, type Markup, raw } from "./markup.ts";

/** What is asked, one a screen. */
export const QUESTIONS = ["pages", "leafHeight", "leafWidth", "blockThickness"] as const;

export type Question = (typeof QUESTIONS)[number];

/** What stands in an empty field; nothing where it is not known. */
export type HintOf = (name: string) => string;

/** The book in four questions, with the check of the first. */
export function measuringPart(units: UnitSystem, hintOf: HintOf): Html {
  return html`<form novalidate data-measure-form>
<p class="measure-step" data-measure-step></p>
<h2 id="measure-title" tabindex="-1" data-measure-title></h2>
${pagesPart(hintOf)}
${checkPart()}
${(["leafHeight", "leafWidth", "blockThickness"] as const).map((length) =>
  screen(length, lengthStep(length), [fieldPart(fieldNamed(length), hintOf), unitsPart(length, units)]),
)}
<p class="measure-told" role="status" data-measure-told></p>
<p class="measure-buttons"><button type="button" data-measure-cancel>${say.measureCancel()}</button> <button type="button" data-measure-back>${say.measureBack()}</button> <button type="submit" class="strong" data-measure-next></button></p>
</form>`;
}

function pagesPart(hintOf: HintOf): Html {
  return screen("pages", pagesStep(), [
    html`<p>${say.measurePagesLead()}</p>`,
    fieldPart(fieldNamed("lastPage"), hintOf),
    fieldPart(fieldNamed("pageOneLeaf"), () => "1"),
    inputPart({ name: "behind", label: say.measureBehind(), help: say.measureHelpBehind(), keys: "numeric", hint: "" }),
  ]);
}

/** Whether the count is right; what follows where it is not is shown by the script. */
function checkPart(): Html {
  return html`<section data-measure-screen="check" hidden>
<figure data-measure-figure></figure>
<p data-measure-question></p>
<p class="measure-answers"><button type="button" data-measure-yes>${say.measureYes()}</button> <button type="button" data-measure-no>${say.measureNo()}</button></p>
<div data-measure-other hidden>${inputPart({ name: "page", label: "", help: say.measureCheckHelp(), keys: "numeric", hint: "" })}</div>
<div data-measure-plates hidden>${fieldPart(fieldNamed("plates"), () => "")}</div>
</section>`;
}

function screen(question: Question, figure: Figure, content: Markup): Html {
  return html`<section data-measure-screen="${question}" hidden>
<figure>${raw(figure.svg)}</figure>
${content}
</section>`;
}

function fieldNamed(name: Field["name"]): Field {
  return bookFields().find((field) => field.name === name)!;
}

function fieldPart(field: Field, hintOf: HintOf): Html {
  const keys = field.form === "count" ? "numeric" : "text";
  const label = fieldLabel(field, { levels: [] });
  return inputPart({ name: field.name, label, help: fieldHelp(field), keys, hint: hintOf(field.name) });
}

interface InputWords {
  readonly name: string;
  readonly label: string;
  readonly help: string;
  readonly keys: "numeric" | "text";
  /** What stands in it while it is empty. */
  readonly hint: string;
}

function inputPart({ name, label, help, keys, hint }: InputWords): Html {
  return html`<div class="field"><label for="measure-${name}">${label}</label><input id="measure-${name}" name="${name}" inputmode="${keys}" autocomplete="off" placeholder="${hint}" aria-describedby="measure-${name}-help"><p class="help" id="measure-${name}-help">${help}</p></div>
`;
}

/** In which units a bare number is; each screen has them, as the ruler may have both. */
function unitsPart(question: Question, units: UnitSystem): Html {
  const choice = (value: UnitSystem, words: string): Html =>
    html`<label><input type="radio" name="units-${question}" value="${value}"${value === units && html` checked`} data-measure-units> ${words}</label>`;
  return html`<fieldset class="measure-units"><legend>${say.finderUnits()}</legend>
${choice("mm", say.finderMillimetres())}
${choice("in", say.finderInches())}</fieldset>`;
}
