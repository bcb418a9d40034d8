import { ICalCalendar } from "ical-generator";
import type { KitClass, Session } from "../../core/class/kit-class.ts";
import type { SiteSettings } from "../../core/site-settings.ts";
import * as say from "../../words/messages.ts";

/** An entry needs an id that no other program makes: without an address of the site it begins with this. */
const NOWHERE = "leaflight.invalid/";

/**
 * A class's sessions as a calendar (iCalendar, RFC 5545), and nothing of its seats. Times are local, as people at the place
 * keep them; a session without a time takes the whole day, and one without a day is left out. The same every time: a stamp is
 * the day of the announcement, or else of the class; ids are made from the address and the session's number.
 */
export function classCalendar(plan: KitClass, { url, feedId, language }: SiteSettings): string {
  const calendar = new ICalCalendar({
    name: plan.title,
    prodId: { company: "Leaflight", product: "Leaflight", language: language.slice(0, 2).toUpperCase() },
  });
  const page = url === undefined ? undefined : `${url}classes/${plan.slug}/`;
  for (const [i, session] of plan.sessions.entries()) {
    const day = session.date ?? (i === 0 ? plan.date : undefined);
    if (day === undefined) continue;
    calendar.createEvent({
      id: `${feedId ?? url ?? NOWHERE}classes/${plan.slug}/#session-${i + 1}`,
      stamp: `${plan.announced ?? plan.date}T00:00:00.000Z`,
      ...timesOf(session, day),
      summary:
        plan.sessions.length > 1 ? say.calendarSession({ class: plan.title, session: session.title }) : plan.title,
      location: plan.place,
      description: plan.summary === "" ? null : plan.summary,
      url: page ?? null,
    });
  }
  return calendar.toString();
}

/** When a session begins and ends. Local times are read as if they were of UTC, and written without a zone. */
function timesOf({ starts, minutes }: Session, day: string) {
  const at = (time: string, later = 0): string =>
    new Date(Date.parse(`${day}T${time}Z`) + later * 60_000).toISOString();
  if (starts === undefined) return { start: at("00:00"), end: at("00:00", 24 * 60), allDay: true };
  return { start: at(starts), end: at(starts, minutes), floating: true };
}
