import { KitError, type KitMessage, placeText } from "../files/message.ts";

/** Words that cannot be read. It speaks English of its own, as there may be no words yet to say it with. */
export class WordsError extends KitError {
  constructor(messages: readonly KitMessage[]) {
    super(messages, inEnglish);
  }
}

function inEnglish(message: KitMessage): string {
  const { field, given, allowed, remedy } = message;
  return `${placeText(message)}  ${field}: ${given}; allowed: ${allowed}; do: ${remedy}`;
}
