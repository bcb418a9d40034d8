import type { Level } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";

/** The number, from 1, of the level of a name. @throws ProblemError at the field, with the names that there are */
export function levelNumber(name: string, levels: readonly Level[], at: FieldPath): number {
  const level = levels.findIndex((one) => one.name === name) + 1;
  if (level > 0) return level;
  const allowed = say.frontALevel({ levels: levels.map((one) => one.name).join(", ") });
  throw problem(at, { given: say.frontGivenText({ value: name }), allowed, remedy: say.frontCorrectName() });
}
