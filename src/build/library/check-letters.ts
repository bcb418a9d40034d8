import { type KitMessage, placeText } from "../../input/files/message.ts";
import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import { uncoveredMessages } from "../../input/fonts/uncovered.ts";
import type { AuthoredText } from "../../input/texts/authored-text.ts";
import * as say from "../../words/messages.ts";
import { coverage } from "../fonts/coverage.ts";

/**
 * Texts with characters that no font of the site has: where packets would print boxes, that is wrong; where pages alone show
 * them, readers may have a font of their own.
 */
export function checkLetters(
  texts: readonly AuthoredText[],
  fonts: readonly OwnFont[],
): { readonly wrong: readonly KitMessage[]; readonly warnings: readonly string[] } {
  const found = uncoveredMessages(texts, coverage(fonts));
  const [printed, shown] = [true, false].map((where) => found.filter(({ text }) => text.printed === where));
  return {
    wrong: printed!.map(({ message }) => message),
    warnings: shown!.map(({ message }) => say.fontWarning({ ...message, place: placeText(message) })),
  };
}
