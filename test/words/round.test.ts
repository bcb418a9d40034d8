import { describe, expect, it } from "vitest";
import { openingWords, standpointWords } from "../../src/words/round.ts";

const radians = (degrees: number) => (degrees * Math.PI) / 180;

const OWN = {
  opening: radians(60),
  own: true,
  width: 130,
  stretch: 1,
  along: false,
  heldOpenTo: undefined,
  window: undefined,
} as const;

describe("openingWords(shape, units)", () => {
  it("says that the kit's own opening shows the true shape", () => {
    expect(openingWords(OWN, "mm")).toBe(
      "Opening 60°, the kit’s own. The picture is 130\u00a0mm wide, its true shape.",
    );
    expect(openingWords({ ...OWN, along: true }, "in")).toBe(
      "Opening 60°, the kit’s own. The picture is 5 1/8\u00a0in wide along its front, its true shape.",
    );
  });

  it("says what stands against another opening", () => {
    const wide = { ...OWN, opening: radians(90), own: false, width: 178.4, stretch: 1.372, window: "misfit" } as const;
    expect(openingWords(wide, "mm")).toBe(
      "Opening 90°. The picture is 178.4\u00a0mm wide, 37% wider than true: a circle becomes a wide oval. The window is cut for the kit’s own opening and does not fit here.",
    );
    const narrow = { ...wide, opening: radians(25), heldOpenTo: radians(31), window: "hidden" } as const;
    expect(openingWords(narrow, "mm")).toContain(
      "The folded leaves hold this book open to about 31° or more. The window is cut for the kit’s own opening and is left out here.",
    );
  });

  it.each([
    [1, "its true shape."],
    [1.004, "its true shape."],
    [1.021, "2.1% wider than true: a circle becomes a wide oval."],
    [0.5, "50% narrower than true: a circle becomes a tall oval."],
  ])("calls a stretch of %d %s", (stretch, words) => {
    expect(openingWords({ ...OWN, stretch }, "mm")).toContain(`mm wide, ${words}`);
  });
});

describe("standpointWords(standpoint)", () => {
  it.each([
    [0, 0, 1, "Seen from the front."],
    [30, -10, 1, "Seen from 30° to the right, 10° below."],
    [-45, 20, 0.5, "Seen from 45° to the left, 20° above, at 200%."],
    [180, 0, 1, "Seen from behind."],
    [-180, 0, 1, "Seen from behind."],
  ])("%d° round, %d° up, at distance %d: %s", (turn, tilt, distance, words) => {
    expect(standpointWords({ turn: radians(turn), tilt: radians(tilt), distance })).toBe(words);
  });
});
