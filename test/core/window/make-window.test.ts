import { describe, expect, it } from "vitest";
import type { Pocket } from "../../../src/core/light/light.ts";
import { makeWindow } from "../../../src/core/window/make-window.ts";
import { partsOf, type WindowWish } from "../../../src/core/window/window.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { bookOf, motifWish, SQUARES } from "./made.ts";

const WISH: WindowWish = { outline: 1, lip: 3, hinge: "left", panel: "flat" };

/** A light of 20 by 45 mm, its axis at x 10 and `behind` the front, which is straight at z 0. */
const pocket = (behind: number, clearance = 2): Pocket => ({
  light: { level: 3, diameter: 20, height: 45, clearance, setback: 4, floor: 120 },
  floor: 120,
  centre: { x: 10, z: -behind },
  notches: [],
  leastWidth: 40,
  largest: { diameter: 20, height: 45 },
});

describe("makeWindow(wish, book)", () => {
  const window = valueFrom(makeWindow(WISH, bookOf(SQUARES)));

  it("has the parts in the order in which they are cut, with what each is made of", () => {
    const motifs = [motifWish()];
    const decorated = valueFrom(makeWindow(WISH, bookOf(SQUARES, { motifs })));
    expect(
      partsOf(decorated).map(({ id, kind, material, frame, count }) => [id, kind, material, frame, count]),
    ).toEqual([
      ["base-frame", "base-frame", "card", "flat", 1],
      ["glazing", "glazing", "acetate", "flat", 1],
      ["door", "door", "card", "flat", 1],
      ["closure-tab", "closure-tab", "card", "own", 1],
      ["decoration-guide", "decoration-guide", "paper", "flat", 1],
      ["holder", "holder", "card", "own", 1],
      ["motif-gull", "motif", "card", "own", 1],
    ]);
    expect(partsOf(undefined)).toEqual([]);
  });

  it("fails as its cutting does", () => {
    // A hole of 40 mm closes under a lip of 20 mm.
    const { kind } = failureIn(makeWindow({ ...WISH, lip: 21 }, bookOf(SQUARES)));
    expect(kind).toBe("hole-breaks");
  });

  it("states the string and the rim", () => {
    // Card of 26 mm opposite the hinge (from 17 to 43): 8 mm and half of it, twice, and 90 mm.
    expect(window.stringLength).toBeCloseTo(2 * (8 + 13) + 90, 1);
    expect(window.frameLength).toBeCloseTo(4 * 80 + 2 * Math.PI * 3, 1);
  });

  it("marks the hinge on the door, the closure on door and base frame, nothing on the guide without a light", () => {
    expect(window.door.scores).toHaveLength(1);
    expect(window.door.marks.map((mark) => mark.kind)).toEqual(["button", undefined]);
    expect(window.frame.marks.map((mark) => mark.kind)).toEqual(["tab-behind"]);
    expect([window.guide.marks, window.frame.scores, window.glazing.scores, window.glazing.marks]).toEqual([
      [],
      [],
      [],
      [],
    ]);
    expect(window.holder.outlines[0]![1]).toEqual([90 + 40, 0]);
  });

  it.each([
    ["flat", 0, 20],
    ["wrap", 0, 60],
  ] as const)("shows on the guide where the light stands, %s", (panel, left, right) => {
    const { guide } = valueFrom(makeWindow({ ...WISH, panel }, bookOf(SQUARES, { pocket: pocket(40) })));
    expect(guide.marks).toEqual([
      {
        kind: "light-here",
        line: [
          [left, 120],
          [left, 75],
          [right, 75],
          [right, 120],
          [left, 120],
        ],
      },
    ]);
  });
});

// By hand: the light's front stands `behind` − 10 mm behind the closed window.
describe("a light near the window", () => {
  const near = (behind: number, clearance?: number) =>
    makeWindow(WISH, bookOf(SQUARES, { pocket: pocket(behind, clearance) }));

  it.each([
    [12, 2],
    [10, 0],
    [15, 5],
  ])("stands clear %d mm behind with a clearance of %d mm", (behind, clearance) => {
    expect(near(behind, clearance)).toHaveProperty("value");
  });

  it.each([
    { behind: 11.9, free: 1.9, more: 0.5 },
    { behind: 11.5, free: 1.5, more: 0.5 },
    { behind: 11.4, free: 1.4, more: 1 },
    { behind: 8, free: -2, more: 4 },
  ])("$behind mm behind is refused with how much further back it would do: $more mm", ({ behind, free, more }) => {
    expect(failureIn(near(behind))).toEqual({
      kind: "light-near-window",
      free: expect.closeTo(free, 9),
      clearance: 2,
      more,
      panel: "flat",
    });
  });
});
