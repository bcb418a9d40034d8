import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import type { KitMessage } from "../files/message.ts";
import type { AuthoredText } from "../texts/authored-text.ts";

/** What needs no letter of a font: spaces, signs that steer the text, and those that a browser draws from what stands before them. */
const UNSEEN = /[\s\p{Cc}\p{Cf}\p{Default_Ignorable_Code_Point}]/u;

/** So many characters are named one by one. */
const NAMED = 3;

/** Characters of a text that no font has, each once. A letter with marks is covered where its parts are. */
export function uncoveredIn(text: string, covers: (codePoint: number) => boolean): string[] {
  const has = (letter: string): boolean => UNSEEN.test(letter) || covers(letter.codePointAt(0)!);
  const letters = [...new Set(text.normalize("NFC"))];
  return letters.filter(
    (letter) => !has(letter) && ![...letter.normalize("NFD")].every((part) => covers(part.codePointAt(0)!)),
  );
}

/** A message for each text with characters that no font has. */
export function uncoveredMessages(
  texts: readonly AuthoredText[],
  covers: (codePoint: number) => boolean,
): { readonly text: AuthoredText; readonly message: KitMessage }[] {
  return texts.flatMap((text) => {
    const missing = uncoveredIn(text.text, covers);
    if (missing.length === 0) return [];
    const { file, line, column, field } = text;
    const message = { file, line, column, field, given: lettersNamed(missing), allowed: say.fontCovered() };
    return [{ text, message: { ...message, remedy: say.fontDoName({ count: missing.length }) } }];
  });
}

/** Letters that no font has, the first of them by name: "月" (U+6708). */
export function lettersNamed(missing: readonly string[]): string {
  const named = missing.slice(0, NAMED).map((letter) => say.fontLetter({ letter, code: codeOf(letter) }));
  const letters = missing.length > NAMED ? named.join(", ") : listText(named);
  return say.fontUncovered({ letters, more: missing.length - named.length });
}

/** As the Unicode Standard writes a character's number: U+6708. */
function codeOf(letter: string): string {
  return `U+${letter.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;
}
