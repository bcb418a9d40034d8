import { catalogueOf, type readSoFar, takeRead } from "../../input/words/fluent.ts";
import { readLanguage, SOURCE } from "../../input/words/read-words.ts";
import { speak } from "../../words/speak.ts";

/** Words that were read, as a thread is lent them. */
export type LentWords = ReturnType<typeof readSoFar>;

/** Speaks English until the library says which language the site speaks. @throws WordsError where the program's own words are broken */
export function speakFirst(base: string): void {
  speak(catalogueOf(readLanguage(base, SOURCE)), SOURCE);
}

/** The same in a thread that is `lent` what was read of words before. @throws WordsError where the program's own words are broken */
export function speakLent(base: string, lent: LentWords): void {
  takeRead(lent);
  speakFirst(base);
}
