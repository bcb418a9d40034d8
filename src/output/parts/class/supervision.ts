import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { SessionView } from "../../views/class/schedule-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { type Html, html, rich } from "../markup.ts";
import { inRows } from "./in-rows.ts";

/** Seats side by side, each with room for a box and its number. */
const SEATS_A_ROW = 16;

const BOX = html`<span class="box"></span>`;

/** What the teacher keeps count of: knives and cells, out and back, for each session. */
export function supervisionSection(view: ClassView): Html {
  const cautions = view.cautions.map(({ title, text }) => html`<li><h3>${title}</h3><p>${text}</p></li>`);
  return html`<section class="flow" data-flow><h2>${say.teacherSupervision()}</h2>
<ul class="cautions small">${cautions}</ul>
<p>${say.teacherSupervisionText()}</p>
${view.sessions.map((session) => sessionList(session, view))}
<p class="keep">${say.teacherHome()}</p>
</section>`;
}

function sessionList(session: SessionView, { seats, hasLight }: ClassView): Html {
  const counts = rich(hasLight ? say.teacherCountsLight : say.teacherCounts, { box: BOX });
  const tables = inRows(seats, SEATS_A_ROW).map((some) => seatTable(captionOf(session), some, hasLight));
  return html`<div class="keep">${tables}
<p class="counts">${counts}</p></div>
`;
}

function seatTable(caption: string, seats: readonly SeatView[], hasLight: boolean): Html {
  const heads = seats.map(({ number }) => html`<th scope="col">${number}</th>`);
  return html`<table class="supervise"><caption>${caption}</caption><thead><tr><th scope="col">${say.classSeatHead()}</th>${heads}</tr></thead><tbody>
${row(say.teacherKnifeOut(), seats, true)}
${row(say.teacherKnifeBack(), seats, true)}
${hasLight && [row(say.teacherCellsIn(), seats, false), row(say.teacherCellsBack(), seats, false)]}
</tbody></table>`;
}

function captionOf({ title, date }: SessionView): string {
  return date === "" ? title : say.classSessionDay({ session: title, date });
}

/** A box for each seat, or only for those with a light. */
function row(name: string, seats: readonly SeatView[], all: boolean): Html {
  const boxes = seats.map(({ view }) => html`<td>${(all || view?.pattern.pocket !== undefined) && BOX}</td>`);
  return html`<tr><th scope="row">${name}</th>${boxes}</tr>`;
}
