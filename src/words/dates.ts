import { language } from "./language.ts";

/** An ISO date as a day: `2026-10-03` as `3 October 2026`. Plain English writes days as in Europe, as the rest of its words do. */
export function dayText(date: string): string {
  const tag = language() === "en" ? "en-GB" : language();
  const format = new Intl.DateTimeFormat(tag, { day: "numeric", month: "long", year: "numeric", timeZone: "UTC" });
  return format.format(new Date(`${date}T00:00:00Z`));
}
