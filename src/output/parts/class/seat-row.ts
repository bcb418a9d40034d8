import { ROW_COLUMNS } from "../../../core/class/seat-row.ts";
import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import { type Html, html, rich } from "../markup.ts";

/** Where a student makes the row of her seat for the teacher's table, from the book in the form above. Hidden until its script runs. */
export function seatRowPart({ seats, kits }: ClassView): Html {
  const numbers = seats.map(({ number }) => html`<option value="${number}">${number}</option>`);
  const titles = kits.map(({ slug, kit }) => html`<option value="${slug}">${kit.title}</option>`);
  const columns = html`<code>${ROW_COLUMNS.join(", ")}</code>`;
  return html`<noscript><p>${say.classRowNoscript()}</p></noscript>
<form class="refit" data-seat-row novalidate hidden>
<p>${say.classRowLead()}</p>
<div class="fields">
<div class="field"><label for="row-seat">${say.classSeatHead()}</label><select id="row-seat" name="seat">${numbers}</select></div>
<div class="field"><label for="row-kit">${say.teacherCostsKitHead()}</label><select id="row-kit" name="kit">${titles}</select></div>
</div>
<div class="field"><label for="row-line">${say.classRowLine()}</label><input id="row-line" name="line" readonly aria-describedby="row-columns"><p class="help" id="row-columns">${rich(say.classRowColumns, { columns })}</p></div>
<p class="refit-buttons"><button type="button" data-row-copy hidden>${say.classRowCopy()}</button> <a href="#row" data-row-save hidden>${say.classRowSave()}</a></p>
<p role="status" data-row-told></p>
</form>`;
}
