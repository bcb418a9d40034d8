let spoken = "en";

/** The language that words are written in (BCP 47): numbers, dates and plurals follow it, too. */
export function language(): string {
  return spoken;
}

/** Sets the language of this process, or of this page. */
export function setLanguage(tag: string): void {
  spoken = tag;
}
