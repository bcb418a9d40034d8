import { handoutGist } from "../../../words/handout-gists.ts";
import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { Handout } from "../../views/class/handout-views.ts";
import type { RoomSession } from "../../views/class/room-view.ts";
import { type Html, html, raw } from "../markup.ts";
import { roomSeats } from "./room-seats.ts";
import { takeHome } from "./take-home.ts";

/** The page that a teacher has open in the room: what is projected, the list of seats, and the sheets that go home. */
export function roomPage(view: ClassView): Html {
  const { plan, room } = view;
  return html`<main id="main" class="room" data-room="${plan.slug}">
<header class="room-head"><h1 dir="auto">${plan.title}</h1>
<nav class="room-ways" aria-label="${say.roomWays()}"><a href="#show">${say.roomShow()}</a><a href="#seats">${say.roomSeats()}</a><a href="#home">${say.roomHome()}</a></nav></header>
<section id="show" class="show" data-show aria-label="${say.roomShow()}">
<div class="show-bar"><p class="clock" data-clock></p><p class="stretch" data-stretch aria-live="polite"></p>${controls(room.sessions)}</div>
<div class="show-step">${view.handouts.map((one, i) => shownSteps(one, view, i === 0))}<p class="note">${say.roomOwnSizes()}</p></div>
<div class="show-targets" data-order="${JSON.stringify(room.sessions.map(({ date, starts, order }) => ({ date, starts, order })))}">${room.sessions.map((_, i) => targetLists(view, i))}</div>
</section>
${roomSeats(view)}
${takeHome(view)}
</main>`;
}

function controls(sessions: readonly RoomSession[]): Html {
  const options = sessions.map(({ title, day }, i) => {
    const name = day === "" ? title : say.classSessionDay({ session: title, date: day });
    return html`<option value="${i}">${name}</option>`;
  });
  return html`<form class="show-form" data-show-form hidden>
<label>${say.roomSession()} <select name="session">${options}</select></label>
<button type="button" data-begin>${say.roomBegin()}</button>
<label>${say.roomTimer()} <input name="minutes" type="number" min="1" max="600" value="10" inputmode="numeric"></label>
<button type="button" data-timer>${say.roomTimerStart()}</button>
<output class="timer" data-left></output>
<button type="button" data-previous>${say.roomPrevious()}</button>
<button type="button" data-next>${say.roomNext()}</button>
<button type="button" data-full>${say.roomFull()}</button>
</form>`;
}

/** A kit's steps, one of which is shown at a time. */
function shownSteps({ name, view: { kit, steps } }: Handout, { plan }: ClassView, first: boolean): Html {
  return html`${steps.map(
    ({ id, title, ready, figure }, i) => html`<article class="shown" data-shown${first && i === 0 && " data-now"}>
<p class="over">${say.roomStep({ kit: name, number: i + 1, of: steps.length })}</p>
<h2>${title}</h2>
<div class="shown-body${figure && " with-figure"}"><p>${ready && plan.ready.includes(ready) ? say.teacherDone() : handoutGist(id, kit)}</p>${figure && html`<div class="drawn">${raw(figure.svg)}</div>`}</div>
</article>`,
  )}`;
}

/** Where each seat should be at a session's pause and at its end. */
function targetLists({ room }: ClassView, session: number): Html {
  const lists = (["pause", "end"] as const).flatMap((when) => {
    const seats = room.seats.flatMap(({ number, targets }) => {
      const target = targets[session]?.[when];
      return target === undefined ? [] : [html`<li><b>${number}</b> ${target}</li>`];
    });
    if (seats.length === 0) return [];
    return [
      html`<div data-target="${session}-${when}"><h2>${say.roomTargets({ when })}</h2><ol class="targets">${seats}</ol></div>`,
    ];
  });
  return html`${lists}`;
}
