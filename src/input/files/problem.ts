/** Steps to a field: keys, and places in lists from 0. */
export type FieldPath = readonly (string | number)[];

/** What an author is told about a thing: short texts that carry the offending values. */
export interface Advice {
  readonly given: string;
  readonly allowed: string;
  readonly remedy: string;
}

/** Something stated that cannot be made: at a field of the front matter, or at a line of another file of the folder. */
export interface Problem extends Advice {
  readonly at: FieldPath | { readonly file: string; readonly line: number | undefined; readonly field: string };
}

/** Problems without the places of the front matter; `atPlace` makes messages of them. */
export class ProblemError extends Error {
  readonly problems: readonly Problem[];
  constructor(problems: readonly Problem[]) {
    super(problems.map(({ at, given, allowed }) => `${JSON.stringify(at)}: ${given}; ${allowed}`).join("\n"));
    this.problems = problems;
  }
}

/** The error of a single problem. */
export function problem(at: Problem["at"], advice: Advice): ProblemError {
  return new ProblemError([{ at, ...advice }]);
}

/** @throws ProblemError where there are any problems, with all of them */
export function stopAt(problems: readonly Problem[]): void {
  if (problems.length > 0) throw new ProblemError(problems);
}
