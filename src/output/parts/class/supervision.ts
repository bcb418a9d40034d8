import { closingOf } from "../../../core/pattern/corner-pattern.ts";
import * as say from "../../../words/messages.ts";
import { type ClassView, hasKnives } from "../../views/class/class-view.ts";
import type { SessionView } from "../../views/class/schedule-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { type Html, html, rich } from "../markup.ts";
import { inRows } from "./in-rows.ts";

/** Seats side by side, each with room for a box and its number. */
const SEATS_A_ROW = 16;

const BOX = html`<span class="box"></span>`;

/** What the teacher keeps count of: knives and cells, out and back, for each session; where no seat has any, what goes home. */
export function supervisionSection(view: ClassView): Html {
  const cautions = view.cautions.map(({ title, text }) => html`<li><h3>${title}</h3><p>${text}</p></li>`);
  return html`<section class="flow" data-flow><h2>${say.teacherSupervision()}</h2>
<ul class="cautions small">${cautions}</ul>
${
  isCounted(view)
    ? [
        html`<p>${say.teacherSupervisionText()}</p>
`,
        view.sessions.map((session) => sessionList(session, view)),
        html`
<p class="keep">${say.teacherHome()}</p>`,
      ]
    : html`<p>${say.teacherNoKnives()}</p>`
}
</section>`;
}

/** Whether a seat has, or may yet have, anything to count. */
function isCounted(view: ClassView): boolean {
  return view.hasLight || hasKnives(view);
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
${row(say.teacherKnifeOut(), seats, cuts)}
${row(say.teacherKnifeBack(), seats, cuts)}
${hasLight && [row(say.teacherCellsIn(), seats, isLit), row(say.teacherCellsBack(), seats, isLit)]}
</tbody></table>`;
}

function captionOf({ title, date }: SessionView): string {
  return date === "" ? title : say.classSessionDay({ session: title, date });
}

function cuts({ knifeFree }: SeatView): boolean {
  return !knifeFree;
}

function isLit({ view }: SeatView): boolean {
  return view !== undefined && closingOf(view.pattern).pocket !== undefined;
}

/** A box for each seat that has the thing. */
function row(name: string, seats: readonly SeatView[], has: (seat: SeatView) => boolean): Html {
  const boxes = seats.map((seat) => html`<td>${has(seat) && BOX}</td>`);
  return html`<tr><th scope="row">${name}</th>${boxes}</tr>`;
}
