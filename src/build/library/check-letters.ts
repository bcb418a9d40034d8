import { type KitMessage, placeText } from "../../input/files/message.ts";
import type { OwnFont } from "../../input/fonts/own-fonts.ts";
import { uncoveredMessages } from "../../input/fonts/uncovered.ts";
import type { AuthoredText } from "../../input/texts/authored-text.ts";
import type { WordsEntry } from "../../input/words/fluent.ts";
import type { MessageParts } from "../../words/message.ts";
import * as say from "../../words/messages.ts";
import { coverage } from "../fonts/coverage.ts";

/**
 * Texts with characters that no font of the site has: where packets would print boxes, that is wrong; where pages alone show
 * them, readers may have a font of their own.
 */
export function checkLetters(
  texts: readonly AuthoredText[],
  words: readonly WordsEntry[],
  fonts: readonly OwnFont[],
): { readonly wrong: readonly KitMessage[]; readonly warnings: readonly string[] } {
  const covers = coverage(fonts);
  const found = [...uncoveredMessages(texts, covers), ...firstOfFile(uncoveredMessages(words.map(wordsText), covers))];
  const [printed, shown] = [true, false].map((where) => found.filter(({ text }) => text.printed === where));
  return {
    wrong: printed!.map(({ message }) => message),
    warnings: shown!.map(({ message }) => say.fontWarning({ ...message, place: placeText(message) })),
  };
}

/** A message that a translator wrote, as one text. */
function wordsText({ file, line, id, pattern }: WordsEntry): AuthoredText {
  return { file, line, column: 1, field: id, text: saidIn(pattern), printed: true };
}

function saidIn(pattern: MessageParts): string {
  const pieces = pattern.map((piece) => {
    if (typeof piece === "string") return piece;
    return "arg" in piece ? "" : [...Object.values(piece.of), piece.other].map(saidIn).join(" ");
  });
  return pieces.join(" ");
}

/** A language that lacks a font lacks it in each of its messages: the first of a file says it for all. */
function firstOfFile(found: ReturnType<typeof uncoveredMessages>): ReturnType<typeof uncoveredMessages> {
  return found.filter(({ text }, i) => found.findIndex((one) => one.text.file === text.file) === i);
}
