import { language } from "./language.ts";

/** An ISO date as a day: `2026-10-03` as `3 October 2026`. */
export function dayText(date: string): string {
  const format = new Intl.DateTimeFormat(dateLanguage(), {
    day: "numeric",
    month: "long",
    year: "numeric",
    timeZone: "UTC",
  });
  return format.format(new Date(`${date}T00:00:00Z`));
}

/** The language that days and times are written in. Plain English writes them as in Europe, as the rest of its words do. */
export function dateLanguage(): string {
  return language() === "en" ? "en-GB" : language();
}
