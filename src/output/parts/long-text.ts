import { usualLetters } from "../drawing/words-width.ts";
import { type Markup, raw } from "./markup.ts";

/** The class of an element whose text is wider than so many usual letters: it is set smaller. */
export function longClass(text: string, most: number): Markup {
  return usualLetters(text) > most && raw(' class="long"');
}

/** Whether one of some texts is wider than so many usual letters. */
export function anyLonger(texts: readonly string[], most: number): boolean {
  return texts.some((text) => usualLetters(text) > most);
}
