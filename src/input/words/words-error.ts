import { partsOf } from "../files/format-message.ts";
import { KitError, type KitMessage } from "../files/message.ts";

/** Words that cannot be read. */
export class WordsError extends KitError {}

/** A message about words, in English of its own: there may be no words yet to say it with. */
export function formatWordsMessage(message: KitMessage): string {
  const { place, field, given, allowed, remedy } = partsOf(message);
  return `${place}  ${field}: ${given}; allowed: ${allowed}; do: ${remedy}`;
}
