import * as say from "../../words/messages.ts";
import type { Advice } from "../files/problem.ts";

/** What keys and columns that hold persons are called. */
const PERSON =
  /(?:^|[^a-z])(?:(?:first|last|fore|sur|family|given|full|nick)?[\s_-]*names?|students?|pupils?|children|child|persons?|participants?|attendees?|guests?|e-?mails?|phones?|mobile|telephone)(?:$|[^a-z])/i;

/** Whether a key of a seat, or a column of its table, is for a person. */
export function isPersonKey(key: string): boolean {
  return PERSON.test(key.trim().replace(/(?<=[a-z])(?=[A-Z])/g, " "));
}

/** Why it is refused: a class's pages are public. */
export function personAdvice(given: string): Advice {
  return { given, allowed: say.frontNoPersons(), remedy: say.frontRemovePersons() };
}
