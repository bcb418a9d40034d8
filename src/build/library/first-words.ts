import { catalogueOf } from "../../input/words/fluent.ts";
import { readLanguage, SOURCE } from "../../input/words/read-words.ts";
import { speak } from "../../words/speak.ts";

/** Speaks English until the library says which language the site speaks. @throws WordsError where the program's own words are broken */
export function speakFirst(base: string): void {
  speak(catalogueOf(readLanguage(base, SOURCE)), SOURCE);
}
