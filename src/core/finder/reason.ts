import type { Problem } from "../problem.ts";

/** What a problem is about, by the beginning of its field; the first that matches counts. */
const ABOUT: readonly (readonly [field: RegExp, words: string])[] = [
  [/^levels/, "Too deep for these leaves"],
  [/^fit\.(height|head)/, "Too high for these leaves"],
  [/^fit\.(borderLeaves|pictureLeaves)/, "Too few leaves"],
  [/^fit\.opening/, "This book cannot be opened so far"],
  [/^book/, "These figures do not agree"],
  [/^light/, "No room for the light"],
  [/^insert/, "No room for the window"],
];

/** One sentence that says why a kit does not fit a book: what it is about, then the figures. */
export function reasonOf(problem: Pick<Problem, "field" | "given" | "allowed">): string {
  const about = ABOUT.find(([field]) => field.test(problem.field))?.[1] ?? "Does not fit";
  return `${about}: ${problem.given}; ${problem.allowed}.`;
}
