import { describe, expect, it } from "vitest";
import { atOnce } from "../../src/core/in-steps.ts";
import { computePattern, patternSteps } from "../../src/core/pattern/compute.ts";
import { fixtureKit } from "../input/kit/kit-folders.ts";

describe("work in steps", () => {
  it("ends with what it gives back, however many steps it has", () => {
    const done: number[] = [];
    const steps = (function* () {
      for (let i = 0; i < 3; i += 1) {
        done.push(i);
        yield;
      }
      return "done";
    })();
    expect(atOnce(steps)).toBe("done");
    expect(done).toEqual([0, 1, 2]);
  });

  it("gives the pattern that is computed at once", () => {
    const kit = fixtureKit("harbour-moon");
    const steps = patternSteps(kit);
    let count = 0;
    let step = steps.next();
    for (; !step.done; step = steps.next()) count += 1;
    expect(count).toBe(2);
    expect(step.value).toEqual(computePattern(kit));
  });
});
