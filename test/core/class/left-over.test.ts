import { describe, expect, it } from "vitest";
import { leftOver, type SeatWork } from "../../../src/core/class/left-over.ts";

/** Worked by hand: 10 min of score lines, leaves of 2 min each, 30 min of window; 48 min in all. */
const WORK: SeatWork = {
  before: 10,
  leaves: [
    { page: 5, minutes: 2 },
    { page: null, minutes: 2 },
    { page: 7, minutes: 2 },
    { page: 9, minutes: 2 },
  ],
  after: 30,
};

describe("leftOver(work, standing)", () => {
  it.each([
    ["nothing noted", undefined, { leaves: 4, from: 5, minutes: 48, share: 0 }],
    ["a page before the first leaf", 3, { leaves: 4, from: 5, minutes: 48, share: 0 }],
    ["the recto of a leaf", 5, { leaves: 3, from: 7, minutes: 36, share: 0.25 }],
    ["the verso of a leaf", 6, { leaves: 3, from: 7, minutes: 36, share: 0.25 }],
    ["a page after a plate", 7, { leaves: 1, from: 9, minutes: 32, share: 1 / 3 }],
    ["the last page", 10, { leaves: 0, from: undefined, minutes: 30, share: 0.375 }],
    ["a page past the end", 400, { leaves: 0, from: undefined, minutes: 30, share: 0.375 }],
  ] as const)("%s", (_, page, left) => {
    const { share, ...rest } = leftOver(WORK, { page, finished: false });
    expect(rest).toEqual({ leaves: left.leaves, from: left.from, minutes: left.minutes });
    expect(share).toBeCloseTo(left.share, 9);
  });

  it("leaves nothing of a finished piece", () => {
    expect(leftOver(WORK, { page: 5, finished: true })).toEqual({ leaves: 0, from: undefined, minutes: 0, share: 1 });
  });
});
