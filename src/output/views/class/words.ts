/** `14 January 2027` of an ISO 8601 day. */
export function dateText(day: string): string {
  return new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" }).format(
    new Date(`${day}T00:00:00Z`),
  );
}

/** `18:30 to 21:00`: when a session of some minutes ends, the next day counted on from midnight. */
export function clockText(starts: string, minutes: number): string {
  const [hours, past] = starts.split(":").map(Number);
  const end = (hours! * 60 + past! + minutes) % 1440;
  const pad = (value: number): string => String(value).padStart(2, "0");
  return `${starts} to ${pad(Math.floor(end / 60))}:${pad(end % 60)}`;
}

/** `seat 3`, `seats 1, 3 and 4`. */
export function seatsText(numbers: readonly number[]): string {
  if (numbers.length === 1) return `seat ${numbers[0]}`;
  return `seats ${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)}`;
}

/** `2 h 30 min`, to the minute; what a clock shows, not an estimate. */
export function minutesText(minutes: number): string {
  const hours = Math.floor(minutes / 60);
  const rest = Math.round(minutes % 60);
  return [hours > 0 ? `${hours} h` : "", rest > 0 || hours === 0 ? `${rest} min` : ""].filter(Boolean).join(" ");
}
