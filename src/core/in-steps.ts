/** Work in steps, which who asks for it may pause between. */
export type Steps<Result> = Generator<void, Result>;

/** Does all steps at once. */
export function atOnce<Result>(steps: Steps<Result>): Result {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
