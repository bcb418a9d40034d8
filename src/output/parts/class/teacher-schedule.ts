import { dryingOf, workOf } from "../../../core/steps/work.ts";
import { timeText } from "../../../words/hours.ts";
import * as say from "../../../words/messages.ts";
import { seatsText } from "../../../words/seats.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { EveningView } from "../../views/class/evening-view.ts";
import type { ScheduleRow } from "../../views/class/schedule-view.ts";
import { type Html, html, type Markup } from "../markup.ts";
import { reachTable, sessionsTable } from "./sessions.ts";

/** The schedule, which seats it is too short for, and what helps them. */
export function teacherSchedule(view: ClassView): Html {
  return html`<section class="flow" data-flow><h2>${say.classSchedule()}</h2>
${sessionsTable(view)}
${runningOrders(view.evening)}
${view.schedule.length > 0 && [reachTable(view), dryingPart(view), toolsPart(view.evening), pairsPart(view.evening), lateSeats(view.schedule)]}
</section>`;
}

function runningOrders({ orders }: EveningView): Html {
  return html`<h2>${say.eveningOrder()}</h2>
<div class="orders">${orders.map(
    ({ title, rows }) =>
      html`<table class="order"><caption>${title}</caption><thead><tr><th scope="col">${say.eveningTime()}</th><th scope="col">${say.eveningWhat()}</th></tr></thead><tbody>${rows.map(({ time, what }) => html`<tr><th scope="row">${time}</th><td>${what}</td></tr>`)}</tbody></table>`,
  )}</div>`;
}

function dryingPart(view: ClassView): Html {
  const plans = Map.groupBy(
    view.schedule.filter(({ drying }) => drying !== ""),
    ({ drying }) => drying,
  );
  const lines = [...plans].map(([plan, rows]) =>
    say.eveningDrying({ seats: seatsText(rows.map(({ seat }) => seat)), plan }),
  );
  return html`${dryingOfKits(view)}
${lines.length > 0 && html`<ul>${lines.map((line) => html`<li>${line}</li>`)}</ul>`}`;
}

function toolsPart({ tools }: EveningView): Markup {
  return tools.length > 0 && html`<h2>${say.eveningTools()}</h2>${tools.map((line) => html`<p>${line}</p>`)}`;
}

function pairsPart({ pairs }: EveningView): Markup {
  if (pairs.length === 0) return false;
  return html`<h2>${say.eveningPairs()}</h2>
<p class="note">${say.eveningPairsNote()}</p>
<ul class="columns two">${pairs.map((pair) => html`<li>${pair}</li>`)}</ul>`;
}

/** What lies still beside the work, a line for each kit that has glue. */
function dryingOfKits({ seats }: ClassView): Html[] {
  const kits = new Map(seats.flatMap(({ kitSlug, view }) => (view?.way === "cut" ? [[kitSlug, view] as const] : [])));
  return [...kits.values()].flatMap(({ kit, pattern, counts }) => {
    const work = workOf(kit, pattern, counts);
    const all = dryingOf(work);
    if (all === 0) return [];
    const longest = Math.max(...work.map(({ dries }) => dries));
    return [html`<p>${say.teacherDrying({ kit: kit.title, all: timeText(all), longest: timeText(longest) })}</p>`];
  });
}

function lateSeats(schedule: readonly ScheduleRow[]): Html {
  const late = schedule.filter(({ finishes }) => !finishes);
  return html`<h2>${say.teacherLate()}</h2>
${late.length > 0 ? html`<ul class="late">${late.map(lateSeat)}</ul>` : html`<p>${say.teacherNoneLate()}</p>`}`;
}

function lateSeat({ seat, kit, short, remedies }: ScheduleRow): Html {
  return html`<li><strong>${say.teacherLateSeat({ seat, kit, minutes: short })}</strong><ul>${remedies.map((remedy) => html`<li>${remedy}</li>`)}</ul></li>`;
}
