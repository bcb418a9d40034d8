import { closingOf } from "../../../core/pattern/corner-pattern.ts";
import { hoursText } from "../../../words/hours.ts";
import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { type Html, html } from "../markup.ts";

/** A slip for each seat: what is done, what is left and how to go on at home. What nobody noted is a line to write on. */
export function takeHome(view: ClassView): Html {
  const seats = view.seats.filter((seat) => seat.view);
  return html`<section id="home" class="take-home"><h2>${say.roomHome()}</h2>
<p class="note">${say.roomHomeNote()}</p>
<p><button type="button" data-print hidden>${say.roomPrint()}</button></p>
<div class="slips">${seats.map((seat) => slip(seat, view))}</div>
</section>`;
}

const LINE = html`<span class="line"></span>`;

function slip(seat: SeatView, { plan, room }: ClassView): Html {
  const work = room.seats.find(({ number }) => number === seat.number)!.work;
  const minutes = work.leaves.reduce((sum, leaf) => sum + leaf.minutes, work.before + work.after);
  const lit = seat.view !== undefined && closingOf(seat.view.pattern).pocket !== undefined;
  return html`<article class="slip" data-slip="${seat.number}">
<h3>${say.seatNumber({ seat: seat.number })} · <span dir="auto">${seat.kitTitle}</span></h3>
<p class="note" dir="auto">${plan.title}</p>
<dl><div><dt>${say.roomUpTo()}</dt><dd data-done>${LINE}</dd></div><div><dt>${say.roomLeft()}</dt><dd data-rest>${LINE}</dd></div></dl>
<p>${say.roomSlipWhole({ leaves: work.leaves.length, time: hoursText(minutes) })}</p>
<p>${seat.knifeFree ? say.roomSlipTakeFolded() : say.roomSlipTake({ light: lit ? "lit" : "plain" })}</p>
<p class="care">${seat.view!.cautions.map(({ short }) => short).join(" ")}</p>
${seat.url !== undefined && html`<p class="note slip-url">${seat.url}</p>`}
</article>
`;
}
