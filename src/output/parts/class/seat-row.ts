import type { ClassTime } from "../../../core/class/schedule.ts";
import { ROW_COLUMNS } from "../../../core/class/seat-row.ts";
import type { UnitSystem } from "../../../core/units/length.ts";
import * as say from "../../../words/messages.ts";
import { decimal } from "../../../words/numbers.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { LinkTo } from "../cards.ts";
import { type Html, html, rich } from "../markup.ts";

/** What the script of the form needs of the class, as the form's `data-seat-row` holds it. */
export interface RowFacts extends ClassTime {
  readonly pace: number;
  readonly units: UnitSystem;
}

/** How many times a kit's estimate someone may take, beside the class's own pace. */
const PACES = [1, 1.5, 2] as const;

/** Where a student makes the row of her seat for the teacher's table, from the book in the form above. Hidden until its script runs. */
export function seatRowPart({ seats, kits, plan }: ClassView, link: LinkTo): Html {
  const numbers = seats.map(({ number }) => html`<option value="${number}">${number}</option>`);
  const titles = kits.map(({ slug, kit }) => html`<option value="${slug}">${kit.title}</option>`);
  const columns = html`<code>${ROW_COLUMNS.join(", ")}</code>`;
  return html`<noscript><p>${say.classRowNoscript()}</p></noscript>
<form class="refit" data-seat-row="${JSON.stringify(factsOf(plan))}" data-site="${link("/").replace("index.html", "")}" novalidate hidden>
<p>${say.classRowLead()}</p>
<div class="fields">
<div class="field"><label for="row-seat">${say.classSeatHead()}</label><select id="row-seat" name="seat">${numbers}</select></div>
<div class="field"><label for="row-kit">${say.teacherCostsKitHead()}</label><select id="row-kit" name="kit">${titles}</select></div>
<div class="field"><label for="row-pace">${say.classRowPace()}</label><select id="row-pace" name="pace"><option value="">${say.classRowPaceClass()}</option>${PACES.filter((pace) => pace !== plan.pace).map(paceOption)}</select></div>
<div class="field"><label for="row-way">${say.classRowWay()}</label><select id="row-way" name="way"><option value="">${say.classRowWayKit()}</option><option value="corner">${say.classRowWayCorner()}</option></select></div>
</div>
<p data-row-time></p>
<div class="field"><label for="row-line">${say.classRowLine()}</label><input id="row-line" name="line" readonly aria-describedby="row-columns"><p class="help" id="row-columns">${rich(say.classRowColumns, { columns })}</p></div>
<p class="refit-buttons"><button type="button" data-row-copy hidden>${say.classRowCopy()}</button> <a href="#row" data-row-save hidden>${say.classRowSave()}</a></p>
<p role="status" data-row-told></p>
<figure class="row-code" data-row-code hidden><div></div><figcaption>${say.classRowCode()}</figcaption></figure>
</form>`;
}

function factsOf({ sessions, ready, fittingShare, pace, units }: ClassView["plan"]): RowFacts {
  return {
    sessions: sessions.map(({ minutes, aside, buffer }) => ({ minutes, aside, buffer })),
    ready,
    fittingShare,
    pace,
    units,
  };
}

function paceOption(pace: (typeof PACES)[number]): Html {
  return html`<option value="${pace}">${say.classRowPaceOwn({ kind: PACE_KINDS[pace], times: decimal(String(pace)) })}</option>`;
}

const PACE_KINDS = { 1: "practised", 1.5: "slower", 2: "slowest" } as const;
