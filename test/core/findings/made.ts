import type { Failure } from "../../../src/core/findings/failure.ts";
import { isFailure, type Outcome } from "../../../src/core/findings/outcome.ts";

/** The value of an outcome. @throws Error with the kind of failure where there is none */
export function valueFrom<T>(outcome: Outcome<T>): T {
  if (isFailure(outcome)) throw new Error(`failed: ${outcome.failure.kind}`);
  return outcome.value;
}

/** Why an outcome has no value. @throws Error where it has one */
export function failureIn(outcome: Outcome<unknown>): Failure {
  if (!isFailure(outcome)) throw new Error("it did not fail");
  return outcome.failure;
}
