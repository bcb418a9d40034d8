import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { lettersNamed, uncoveredIn } from "../fonts/uncovered.ts";
import type { Typeface } from "./typeface.ts";

/** Stops at letters that none of the fonts has: they would be drawn as boxes. @throws ProblemError */
export function checkCovered(text: string, fonts: Iterable<Typeface>, at: FieldPath): void {
  const missing = uncoveredIn(text, (codePoint) => {
    for (const font of fonts) if (font.covers(codePoint)) return true;
    return false;
  });
  if (missing.length === 0) return;
  const advice = { given: lettersNamed(missing), allowed: say.lettersCovered() };
  throw problem(at, { ...advice, remedy: say.lettersWithFont({ count: missing.length }) });
}
