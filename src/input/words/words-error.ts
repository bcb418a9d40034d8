import { KitError, type KitMessage, placeText } from "../files/message.ts";

/** Words that cannot be read. */
export class WordsError extends KitError {}

/** A message about words, in English of its own: there may be no words yet to say it with. */
export function formatWordsMessage(message: KitMessage): string {
  const { field, given, allowed, remedy } = message;
  return `${placeText(message)}  ${field}: ${given}; allowed: ${allowed}; do: ${remedy}`;
}
