import { dryingOf, workOf } from "../../../core/steps/work.ts";
import { timeText } from "../../../words/hours.ts";
import * as say from "../../../words/messages.ts";
import type { ClassView } from "../../views/class/class-view.ts";
import type { ScheduleRow } from "../../views/class/schedule-view.ts";
import { type Html, html } from "../markup.ts";
import { reachTable, sessionsTable } from "./sessions.ts";

/** The schedule, which seats it is too short for, and what helps them. */
export function teacherSchedule(view: ClassView): Html {
  return html`<section class="flow" data-flow><h2>${say.classSchedule()}</h2>
${sessionsTable(view)}
${dryingOfKits(view)}
${view.schedule.length > 0 && [reachTable(view), lateSeats(view.schedule)]}
</section>`;
}

/** What lies still beside the work, a line for each kit that has glue. */
function dryingOfKits({ seats }: ClassView): Html[] {
  const kits = new Map(seats.flatMap(({ kitSlug, view }) => (view ? [[kitSlug, view] as const] : [])));
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
