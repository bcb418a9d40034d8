import { dateLanguage } from "./dates.ts";
import * as say from "./messages.ts";

/** `18:30 to 21:00`: when a session of some minutes ends, the next day counted on from midnight. `starts` is `18:30`. */
export function clockText(starts: string, minutes: number): string {
  const from = Date.parse(`1970-01-01T${starts}Z`);
  return say.clockFromTo({ from: timeText(from), to: timeText(from + minutes * 60_000) });
}

/** `19:20`: the time of day so many minutes after `18:30`, to the minute. */
export function clockAt(starts: string, minutes: number): string {
  return timeText(Date.parse(`1970-01-01T${starts}Z`) + minutes * 60_000);
}

/** `2 h 30 min`, to the minute: what a clock shows, not an estimate. */
export function minutesText(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return say.hoursMinutesOnly({ minutes: rest });
  return rest === 0 ? say.hoursOnly({ hours }) : say.hoursAndMinutes({ hours, minutes: rest });
}

/** Less than this away, a weekday says which day it is, ms. */
const WEEK = 6 * 86_400_000;

/** A time of day where the reader is: `14:35`, with its weekday where that is not today's, or its day where that is far off. Both are ms of the epoch. */
export function dayTimeText(time: number, now: number): string {
  const today = new Date(time).toDateString() === new Date(now).toDateString();
  return new Intl.DateTimeFormat(dateLanguage(), {
    ...(today ? {} : Math.abs(time - now) < WEEK ? { weekday: "long" } : { day: "numeric", month: "long" }),
    hour: "2-digit",
    minute: "2-digit",
  }).format(time);
}

function timeText(time: number): string {
  return new Intl.DateTimeFormat(dateLanguage(), { hour: "2-digit", minute: "2-digit", timeZone: "UTC" }).format(time);
}
