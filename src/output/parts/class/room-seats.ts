import type { SeatWork } from "../../../core/class/left-over.ts";
import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { type Html, html, type Markup } from "../markup.ts";

/** Who is here and how far each seat is; kept on the teacher's device by the page's script. */
export function roomSeats(view: ClassView): Html {
  const { room, seats } = view;
  const heads = room.sessions.map(({ title }) => html`<th scope="col">${say.roomHere({ session: title })}</th>`);
  return html`<section id="seats" class="room-seats" data-seats><h2>${say.roomSeats()}</h2>
<p class="note">${say.roomSeatsNote()}</p>
<noscript><p class="note">${say.roomNoscript()}</p></noscript>
<p class="note" data-not-kept hidden>${say.roomNotKept()}</p>
<div class="wide"><table class="plain"><thead><tr><th scope="col">${say.classSeatHead()}</th>${heads}<th scope="col">${say.roomUpTo()}</th><th scope="col">${say.roomFinished()}</th><th scope="col">${say.roomLeft()}</th></tr></thead><tbody>
${seats.map((seat) => seatRow(seat, view))}
</tbody></table></div>
<p data-sum aria-live="polite"></p>
<p><button type="button" data-clear hidden>${say.roomClear()}</button></p>
</section>`;
}

/** The verso of the last leaf with a page. */
function lastPage({ leaves }: SeatWork): number {
  return Math.max(1, ...leaves.flatMap(({ page }) => (page === null ? [] : [page + 1])));
}

function seatRow(seat: SeatView, { room }: ClassView): Html {
  const own = room.seats.find(({ number }) => number === seat.number);
  const named = (name: string, label: string): Html => html`name="${name}" aria-label="${label}" disabled`;
  const boxes = room.sessions.map(({ title }, i) => {
    const label = say.roomSeatHere({ seat: seat.number, session: title });
    return html`<td data-label="${say.roomHere({ session: title })}"><input type="checkbox" ${named(`here-${i}`, label)}></td>`;
  });
  const rest: Markup = own
    ? html`<td data-label="${say.roomUpTo()}"><input type="number" min="1" max="${lastPage(own.work)}" inputmode="numeric" ${named("page", say.roomSeatPage({ seat: seat.number }))}></td><td data-label="${say.roomFinished()}"><input type="checkbox" ${named("finished", say.roomSeatFinished({ seat: seat.number }))}></td><td data-label="${say.roomLeft()}" data-rest></td>`
    : html`<td colspan="3">${seat.awaits ? say.classBookToCome() : say.teacherNoFit()}</td>`;
  return html`<tr data-seat="${seat.number}"${own && html` data-work="${JSON.stringify(own.work)}"`}><th scope="row" data-label="${say.classSeatHead()}">${seat.number}<span class="note" dir="auto">${seat.kitTitle}</span></th>${boxes}${rest}</tr>
`;
}
