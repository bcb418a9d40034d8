import type { Failure } from "./failure.ts";

/** What a computation gives: a value, or why there is none. */
export type Outcome<T> = { readonly value: T } | { readonly failure: Failure };

export function isFailure<T>(outcome: Outcome<T>): outcome is { readonly failure: Failure } {
  return "failure" in outcome;
}
