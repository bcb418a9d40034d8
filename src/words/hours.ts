import * as say from "./messages.ts";

/** `2 h 45 min`, to the quarter hour; at least one. */
export function hoursText(minutes: number): string {
  const quarters = Math.max(1, Math.round(minutes / 15));
  const hours = Math.floor(quarters / 4);
  const rest = (quarters % 4) * 15;
  if (hours === 0) return say.hoursMinutesOnly({ minutes: rest });
  return rest === 0 ? say.hoursOnly({ hours }) : say.hoursAndMinutes({ hours, minutes: rest });
}
