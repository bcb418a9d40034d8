import { bookFields } from "../../../core/refit/fields.ts";
import { fieldLabel } from "../../../words/fields.ts";
import * as say from "../../../words/messages.ts";
import { unitName } from "../../../words/units.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import { type Html, html } from "../markup.ts";

/** A sheet to write every seat's book on at the table, as the books table asks for it. */
export function blankMeasures({ plan, seats }: ClassView): Html {
  const fields = bookFields();
  const heads = fields.map((field) => html`<th scope="col">${fieldLabel(field, { levels: [] })}</th>`);
  const rows = seats.map(
    ({ number }) => html`<tr><th scope="row">${number}</th>${fields.map(() => html`<td></td>`)}</tr>`,
  );
  return html`<section class="flow" data-flow><h2>${say.teacherMeasures()}</h2>
<p>${say.teacherMeasuresText({ unit: unitName(plan.units) })}</p>
<table class="blanks"><thead><tr><th scope="col">${say.classSeatHead()}</th>${heads}</tr></thead><tbody>${rows}</tbody></table>
</section>`;
}
