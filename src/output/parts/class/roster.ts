import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import { type Help, helpsOf } from "../../views/class/misfit-view.ts";
import type { SeatView } from "../../views/class/seat-view.ts";
import { longClass } from "../long-text.ts";
import { type Html, html, type Markup } from "../markup.ts";

/** A title of more usual letters is set smaller. */
export const LONG_TITLE = 60;

/** Who sits where with which book, which seats do not fit, and what to look at. */
export function rosterSection(view: ClassView): Html {
  const { plan, date, seats, sessions } = view;
  const lede = say.teacherLede({ date, place: plan.place, seats: seats.length, sessions: sessions.length });
  return html`<section class="flow run-on" data-flow>
<p class="over">${say.teacherOver()}</p>
<h1 dir="auto"${longClass(plan.title, LONG_TITLE)}>${plan.title}</h1>
<p class="lede">${lede}</p>
<h2>${say.teacherRoster()}</h2>
<table class="roster"><thead><tr><th scope="col">${say.classSeatHead()}</th><th scope="col">${say.teacherKitHead()}</th><th scope="col">${say.teacherLeavesHead()}</th><th scope="col">${say.teacherOpeningHead()}</th><th scope="col">${say.teacherWidthHead()}</th><th scope="col">${say.classWorkHead()}</th></tr></thead><tbody>${seats.map(rosterRow)}</tbody></table>
<p class="note">${say.teacherRosterNote()}</p>
${seats.map(misfit)}
${doubts(view)}
</section>`;
}

function rosterRow(seat: SeatView): Html {
  return html`<tr><th scope="row">${seat.number}</th><td>${seat.kitTitle}<span class="note">${seat.book}</span>${seat.knifeFree && html`<span class="note">${say.classSeatFolded()}</span>`}</td>${fitCells(seat)}</tr>`;
}

function fitCells({ awaits, view, holdWidth, hours }: SeatView): Html {
  if (awaits) return html`<td colspan="4">${say.classBookToCome()}</td>`;
  if (!view)
    return html`<td colspan="4"><strong>${say.teacherNoFit()}</strong><span class="note">${say.teacherSeeBelow()}</span></td>`;
  const { firstLeaf: first, lastLeaf: last } = view.pattern.fit;
  return html`<td>${say.teacherLeaves({ first, last })}</td><td>${view.figures.opening}</td><td>${holdWidth}</td><td>${hours}<span class="note">${view.difficulty}</span></td>`;
}

function misfit({ number, kitTitle, misfit: found }: SeatView): Markup {
  if (!found) return false;
  const { why } = found;
  const helps = helpsOf(found);
  return html`<div class="warn"><h2>${say.teacherMisfit({ seat: number, kit: kitTitle })}</h2>
<p>${why}</p>
<p>${say.teacherHelp()}</p>
<ul class="ways">${helps.map(way)}</ul>
<p class="note">${say.teacherEntryNote()}</p></div>`;
}

function way({ words, facts, entry }: Help): Html {
  return html`<li>${words}${facts !== "" && html`<span class="note">${facts}</span>`}${
    entry && html`<span class="note">${say.teacherEntry({ into: entry.into })}</span><code>${entry.text}</code>`
  }</li>`;
}

function doubts({ seats }: ClassView): Markup {
  const doubtful = seats.filter((seat) => seat.doubts.length > 0);
  if (doubtful.length === 0) return false;
  const items = doubtful.map(
    (seat) => html`<li><strong>${say.teacherSeat({ seat: seat.number })}</strong> ${seat.doubts.join(" ")}</li>`,
  );
  return html`<h2>${say.teacherDoubts()}</h2>
<ul class="look-at">${items}</ul>`;
}
