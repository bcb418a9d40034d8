import { KitError } from "./message.ts";
import { type Problem, ProblemError } from "./problem.ts";

/** Makes all of several things, and tells of every problem on the way, each once. @throws ProblemError */
export function eachOf<T>(makes: readonly (() => T)[]): T[] {
  const problems = new Map<string, Problem>();
  const made = makes.flatMap((make) => {
    try {
      return [make()];
    } catch (error) {
      for (const one of problemsIn(error)) problems.set(JSON.stringify(one), one);
      return [];
    }
  });
  if (problems.size > 0) throw new ProblemError([...problems.values()]);
  return made;
}

/** What is told of by an error about fields or files; other errors go on. */
function problemsIn(error: unknown): readonly Problem[] {
  if (error instanceof ProblemError) return error.problems;
  if (!(error instanceof KitError)) throw error;
  return error.messages.map(({ file, line, field, given, allowed, remedy }) => {
    return { at: { file, line, field }, given, allowed, remedy };
  });
}
