import * as tinyduration from "tinyduration";
import { describe, expect, it } from "vitest";
import { isoDuration } from "../../../src/output/feeds/duration.ts";

describe("isoDuration(minutes)", () => {
  // ISO 8601-1: PT30M and PT1H30M are durations; PT90M and PT1H30M are equal.
  it.each([
    [0, "PT0M"],
    [0.4, "PT0M"],
    [29.5, "PT30M"],
    [60, "PT1H"],
    [90, "PT1H30M"],
    [525, "PT8H45M"],
    [1500, "PT25H"],
  ])("of %d is %s", (minutes, text) => expect(isoDuration(minutes)).toBe(text));

  it("is read back by another reader as the same minutes", () => {
    for (let minutes = 0; minutes < 4000; minutes += 7) {
      const { hours = 0, minutes: rest = 0 } = tinyduration.parse(isoDuration(minutes));
      expect(60 * hours + rest).toBe(minutes);
    }
  });
});
