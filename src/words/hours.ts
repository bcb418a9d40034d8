import * as say from "./messages.ts";

/** An estimate: `2 h 45 min`, to the quarter hour; at least one. */
export function hoursText(minutes: number): string {
  return timeText(Math.max(1, Math.round(minutes / 15)) * 15);
}

/** A time that someone states: `20 min`, `12 h 30 min`, to the minute. */
export function timeText(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes % 60);
  if (hours === 0) return say.hoursMinutesOnly({ minutes: rest });
  return rest === 0 ? say.hoursOnly({ hours }) : say.hoursAndMinutes({ hours, minutes: rest });
}
