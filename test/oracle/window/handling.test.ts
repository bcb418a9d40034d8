import { describe, expect, it } from "vitest";
import { distanceTo, extentOf, isInside, pointsAlong } from "../../core/geometry/plane.ts";
import type { PublishedWindow } from "../../core/light/published-window.ts";
import { headsApart, loopOf, rimToButton, slotsOf, swing } from "./handling.ts";
import { discWindow, frameOf, partOf } from "./window.ts";

const SQUARE =
  '<rect id="rim" x="10" y="10" width="180" height="180"/><rect id="well" x="45" y="40" width="90" height="110"/>';

const WINDOWS: readonly (readonly [name: string, make: () => PublishedWindow])[] = [
  ["discs, wrap, hinge left", () => discWindow()],
  ["discs, flat, hinge right, a broad lip", () => discWindow({ insert: { panel: "flat", hinge: "right", lip: 6.5 } })],
  ["a plate with more card at its right", () => discWindow({ shapes: SQUARE, insert: { lip: 4 } })],
  ["the same, hinged at the right", () => discWindow({ shapes: SQUARE, insert: { lip: 4, hinge: "right" } })],
  [
    "discs, rtl, rounded spine, unequal borders, the outermost picture leaves lost",
    () =>
      discWindow({
        book: { direction: "rtl" },
        fit: { spine: "rounded", borderLeaves: [4, 25], lostLeaves: [5, 6, 179] },
      }),
  ],
];

/** For the knot and the hand, mm (common practice, no source). */
const KNOT = 90;

// Source: the parts' own purpose, worked out from the published pattern; nothing of the program is used.
describe.each(WINDOWS)("the window of %s", (_, make) => {
  const pattern = make();

  it("has string for the loop round its button, for the knot, and hardly more", () => {
    const spare = pattern.insert.stringLength - loopOf(pattern) - KNOT;
    expect(spare).toBeGreaterThanOrEqual(0);
    expect(spare).toBeLessThanOrEqual(5);
    expect(loopOf(pattern)).toBeGreaterThan(2 * rimToButton(pattern));
  });

  it("has a door that closes on the base frame and swings away from it", () => {
    const { closed, opened, hinge } = swing(pattern);
    const { rim, window } = frameOf(partOf(pattern, "base frame"));
    for (const point of pointsAlong(closed, 2))
      expect(isInside(point, [rim]) || distanceTo(point, [rim]) < 0.04).toBe(true);
    const out = pattern.insert.hinge === "left" ? -1 : 1;
    for (const [x, y] of opened) {
      expect(out * (x - hinge)).toBeGreaterThan(-0.01);
      expect(isInside([x, y], [window])).toBe(false);
    }
    const [shut, open] = [extentOf([closed]), extentOf([opened])];
    expect(open.width).toBeCloseTo(shut.width, 6);
    // Opened, it clears the whole window, and of the rim it covers no more than what bulges beyond the hinge.
    const bulge = out < 0 ? hinge - extentOf([rim]).left : extentOf([rim]).right - hinge;
    expect(bulge).toBeGreaterThan(0);
    expect(bulge).toBeLessThanOrEqual(4.04);
  });

  it("has a holder whose slots stand as far apart as the outermost leaves' heads, and hold", () => {
    const { middles, widths, depths, above, beyond, tongues } = slotsOf(pattern);
    expect(middles).toHaveLength(2);
    expect(Math.abs(middles[1]! - middles[0]! - headsApart(pattern))).toBeLessThan(0.005);
    for (const width of widths) expect(width).toBeCloseTo(2, 2);
    for (const depth of depths) expect(Math.abs(depth - 22)).toBeLessThan(0.01);
    for (const tongue of tongues) expect(tongue).toBeCloseTo(2, 2);
    expect(above).toBeGreaterThanOrEqual(12);
    for (const end of beyond) expect(end).toBeGreaterThanOrEqual(15);
  });
});
