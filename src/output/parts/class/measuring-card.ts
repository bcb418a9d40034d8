import type { Field } from "../../../core/refit/field.ts";
import { bookFields } from "../../../core/refit/fields.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import { fieldHelp, fieldLabel, optionText } from "../../../words/fields.ts";
import * as say from "../../../words/messages.ts";
import { printedRuler } from "../../drawing/class/ruler.ts";
import { SHEET } from "../../drawing/sheets/true-scale.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import { type Html, html, type Markup, raw } from "../markup.ts";

/** What ten centimetres of the printed ruler may measure, mm (common practice, no source). */
const PASS_BAND = { least: 99.5, most: 100.5 };

/** A sheet with two cards: what to measure of a book, room to write, and a ruler at true scale. */
export function measuringCard({ plan }: Pick<ClassView, "plan">): Html {
  const card = cardPart(plan.title, plan.units);
  return html`<section class="sheet true-scale" data-sheet>
${card}
${card}
</section>`;
}

function cardPart(title: string, units: UnitSystem): Html {
  return html`<div class="measuring">
<p class="over">${say.cardOver({ class: title })}</p>
<h2>${say.cardHeading()} <span class="seat-blank">${say.cardSeat()} <span class="line"></span></span></h2>
<dl>${bookFields().map((field) => fieldPart(field, units))}</dl>
<svg class="ruler" width="${SHEET.width}mm" height="16mm" viewBox="0 0 ${SHEET.width} 16" role="img" aria-label="${say.cardRuler()}">${raw(printedRuler(SHEET.width))}</svg>
<p class="note">${say.cardNote(PASS_BAND)}</p>
</div>`;
}

function fieldPart(field: Field, units: UnitSystem): Html {
  return html`<div><dt>${fieldLabel(field, { levels: [] })}</dt><dd class="blank">${room(field, units)}</dd><dd class="note">${fieldHelp(field)}</dd></div>`;
}

/** Choices to tick, or room to write before a unit. */
function room(field: Field, units: UnitSystem): Markup {
  if (field.form === "choice")
    return field.options.map((option) => html`<span class="box"></span>${optionText(option)} `);
  return html`<span class="line"></span> ${field.form === "length" && units}`;
}
