import type { EducationEvent, Place, WithContext } from "schema-dts";
import type { Session } from "../../core/class/kit-class.ts";
import type { SiteSettings } from "../../core/site-settings.ts";
import type { ClassView } from "../views/class/class-view.ts";
import { authorOf } from "./authorship.ts";

/** A class's page as an event of schema.org, and nothing of its seats but how many there are. */
export function eventOf({ slug, plan }: ClassView, settings: SiteSettings): WithContext<EducationEvent> {
  const { title, summary, place, seats, awaiting } = plan;
  const organizer = authorOf(settings);
  const url = settings.url === undefined ? undefined : `${settings.url}classes/${slug}/`;
  const capacity = seats.length + awaiting.length;
  const location: Place = { "@type": "Place", name: place, address: place };
  const days = plan.sessions.map((session) => timesOf(session, plan.date));
  return {
    "@context": "https://schema.org",
    "@type": "EducationEvent",
    ...(url === undefined ? {} : { "@id": url, url }),
    name: title,
    ...(summary === "" ? {} : { description: summary }),
    inLanguage: settings.language,
    startDate: days[0]!.startDate,
    endDate: days.at(-1)!.endDate,
    location,
    ...(capacity > 0 ? { maximumAttendeeCapacity: capacity } : {}),
    ...(organizer ? { organizer } : {}),
    ...(days.length > 1
      ? {
          subEvent: plan.sessions.map(
            ({ title: name }, i) => ({ "@type": "EducationEvent", name, ...days[i]!, location }) as const,
          ),
        }
      : {}),
  };
}

/** When a session begins and ends, in local time; days where no time is stated, and the class's first where no day is. */
function timesOf({ date, starts, minutes }: Session, first: string): { startDate: string; endDate: string } {
  const day = date ?? first;
  if (starts === undefined) return { startDate: day, endDate: day };
  const end = new Date(Date.parse(`${day}T${starts}Z`) + minutes * 60_000);
  return { startDate: `${day}T${starts}`, endDate: end.toISOString().slice(0, "2027-01-14T18:30".length) };
}
