import { describe, expect, it } from "vitest";
import type { LevelMap } from "../../../src/core/picture/level-map.ts";
import type { WindowWish } from "../../../src/core/window/window.ts";
import { cutWindow } from "../../../src/core/window/window-shapes.ts";
import { failureIn, valueFrom } from "../findings/made.ts";
import { areaOf, circleRing, extentOf, type Ring } from "../geometry/plane.ts";
import { bookOf, box, pictureOf, SQUARES, sidesOf } from "./made.ts";

const WISH: WindowWish = { outline: 1, lip: 3, hinge: "left", panel: "flat" };

const cut = (map: LevelMap, wish: Partial<WindowWish> = {}) => cutWindow({ ...WISH, ...wish }, bookOf(map));

/** The plate of 80 mm with a hole of another outline. */
const pierced = (hole: Ring): LevelMap => pictureOf([1, box(10, 10, 90, 90)], [3, hole]);

// By hand: x counts from the middle of the front, at 50 mm.
describe("cutWindow(wish, book)", () => {
  it("grows the region outward by the lip and draws its hole inward by it", () => {
    const { hole, frame, glazing, door } = valueFrom(cut(SQUARES));
    expect(sidesOf(hole)).toEqual([-17, 33, 17, 67]);
    expect(sidesOf(frame)).toEqual([-43, 7, 43, 93]);
    // A square grown by 3 mm has round corners (Steiner: A + L·d + π·d²).
    expect(areaOf(frame)).toBeCloseTo(6400 + 320 * 3 + Math.PI * 9 - 34 ** 2, 0);
    expect(sidesOf(glazing)).toEqual([-40, 10, 40, 90]);
    // Its corners are as round as the rough corners of the rim leave them.
    expect(Math.abs(areaOf(glazing) - 6400)).toBeLessThan(2);
    expect(door.score[0]![0]).toBeCloseTo(-42.9, 2);
  });

  it("unrolls the region before it is grown", () => {
    const { hole, frame } = valueFrom(cut(SQUARES, { panel: "wrap" }));
    expect(sidesOf(hole)).toEqual([-57, 33, 57, 67]);
    expect(sidesOf(frame)).toEqual([-123, 7, 123, 93]);
  });

  it.each(["left", "right"] as const)(
    "ends the glazing 1 mm from a hinge at the %s that lies inside the region",
    (hinge) => {
      // A disc of 40 mm grown by 3 mm: its chord of 34.4 mm (0.4 of its height) lies 3.6 mm inside, at 39.4 mm from the middle.
      const disc = pictureOf([1, circleRing(50, 50, 40, 2000)], [3, circleRing(50, 50, 25, 2000)]);
      const { glazing, door } = valueFrom(cut(disc, { hinge }));
      const out = hinge === "left" ? -1 : 1;
      expect(door.score[0]![0] * out).toBeCloseTo(39.4, 1);
      const { left, right } = extentOf(glazing);
      const [at, opposite] = hinge === "left" ? [left, right] : [right, left];
      expect(at * out).toBeCloseTo(door.score[0]![0] * out - 1, 3);
      expect(opposite * out).toBeCloseTo(-40, 1);
    },
  );

  it("gives the same shapes again while wish and front stay, and others when one changes", () => {
    const first = cut(SQUARES);
    expect(cut(SQUARES)).toBe(first);
    expect(cut(SQUARES, { lip: 4 })).not.toBe(first);
    const moved = cutWindow(WISH, bookOf(SQUARES, { box: { head: 5, height: 100, width: 100 } }));
    expect(sidesOf(valueFrom(moved).hole)).toEqual([-17, 38, 17, 72]);
  });
});

describe("a window that cannot be cut", () => {
  it("has no region to be cut from", () => {
    expect(failureIn(cut(SQUARES, { outline: 4 }))).toEqual({ kind: "outline-hidden", level: 4 });
  });

  it.each([
    ["closes a hole of 20 mm", 10, 10, true],
    ["leaves nothing of it", 14, 10, true],
  ])("%s with a lip of %d mm", (_, lip, half, closes) => {
    const failure = failureIn(cut(pierced(box(50 - half, 40, 50 + half, 60)), { lip }));
    expect(failure).toEqual({ kind: "hole-breaks", level: 1, lip, closes, most: 9.9, least: 2 });
  });

  it("leaves a hole of 20 mm open with a lip that is smaller than half of it", () => {
    expect(sidesOf(valueFrom(cut(pierced(box(40, 40, 60, 60)), { lip: 9.9 })).hole)).toEqual([-0.1, 49.9, 0.1, 50.1]);
  });

  // A room of 40 mm and one of 14 mm, joined by a neck that is 5 mm high.
  const rooms: Ring = [
    [25, 30],
    [65, 30],
    [65, 47.5],
    [68, 47.5],
    [68, 43],
    [82, 43],
    [82, 57],
    [68, 57],
    [68, 52.5],
    [65, 52.5],
    [65, 70],
    [25, 70],
  ];
  it.each([3, 6.5, 8])(
    "breaks the hole at its neck with a lip of %d mm, also where the smaller piece is gone",
    (lip) => {
      expect(failureIn(cut(pierced(rooms), { lip }))).toEqual({
        kind: "hole-breaks",
        level: 1,
        lip,
        closes: false,
        most: 2.4,
        least: 2,
      });
    },
  );

  it("passes with a lip that the neck bears", () => {
    expect(cut(pierced(rooms), { lip: 2.4 })).toHaveProperty("value");
  });

  it("has no straight place for a hinge", () => {
    const diamond = pictureOf(
      [
        1,
        [
          [5, 50],
          [50, 5],
          [95, 50],
          [50, 95],
        ],
      ],
      [3, box(40, 40, 60, 60)],
    );
    for (const hinge of ["left", "right"] as const) {
      expect(failureIn(cut(diamond, { hinge, lip: 2 }))).toEqual({
        kind: "no-hinge",
        level: 1,
        side: hinge,
        shortest: 18,
        bulge: 4,
      });
    }
  });

  // A lobe stands 3 mm further out than the side that is hinged, and an arm of the hole reaches into it. The rim begins at
  // −45; the hinge stands 3 mm inside it, along the side, and the glazing begins 1 mm further in, at −41. The
  // arm, drawn inward by the lip of 2 mm, must have 1.5 mm of glazing beyond it.
  const rim: Ring = [
    [16, 10],
    [90, 10],
    [90, 90],
    [10, 90],
    [10, 45],
    [16, 45],
    [16, 35],
    [7, 35],
    [7, 20],
    [16, 20],
  ];
  it.each([
    { arm: 8.4, covered: false },
    { arm: 8.55, covered: true },
  ])("has glazing that ends at the hinge, before the hole does: an arm from $arm mm, $covered", ({ arm, covered }) => {
    const hole: Ring = [
      [arm, 23],
      [35, 23],
      [35, 45],
      [70, 45],
      [70, 75],
      [25, 75],
      [25, 32],
      [arm, 32],
    ];
    const outcome = cut(pictureOf([1, rim], [3, hole]), { lip: 2 });
    if (covered) expect(valueFrom(outcome).door.score[0]![0]).toBeCloseTo(-42, 2);
    else expect(failureIn(outcome)).toEqual({ kind: "glazing-too-small", level: 1, lip: 2, overlap: 1.5 });
  });
});
