import { describe, expect, it } from "vitest";
import { tickPlace, untickPlace } from "../../../src/core/bench/tick-place.ts";
import { begin, leafPlace, madePlan } from "./made.ts";

describe("tickPlace and untickPlace(progress, place)", () => {
  const plan = madePlan();
  it.each([
    ["a leaf", leafPlace(plan, 5)],
    ["other work", plan.places[0]!],
  ])("tick %s and nothing else, and take that off again", (_, place) => {
    const ticked = tickPlace(begin(), place);
    expect([ticked.ticks.map(({ leaf }) => leaf), ticked.passed]).toEqual(
      place.item ? [[], ["step check"]] : [[5], []],
    );
    expect(untickPlace(ticked, place)).toEqual(begin());
  });
});
