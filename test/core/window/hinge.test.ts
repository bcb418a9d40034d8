import { describe, expect, it } from "vitest";
import { type Door, hangDoor } from "../../../src/core/window/hinge.ts";
import { areaOf, circleRing, extentOf, type Point, type Ring, shoelace } from "../geometry/plane.ts";
import { box, plate } from "./made.ts";

const SQUARE = box(0, 0, 100, 80);

/** A plate of 100 by 80 mm whose card is `card` wide at its left. */
const withCard = (card: number): Ring[] => plate(SQUARE, box(card, 15, 80, 65));

/** A pointed plate, `point` mm long before it is 100 mm high. */
const pointed = (point: number): Ring[] => [
  [
    [0, 50],
    [point, 0],
    [120, 0],
    [120, 100],
    [point, 100],
  ],
];

/** A plate with two teeth of 10 mm at its left, from 0 to `first` and from 60 to 60 + `second`. */
const comb = (first: number, second: number): Ring[] => [
  [
    [0, 0],
    [100, 0],
    [100, 140],
    [10, 140],
    [10, 60 + second],
    [0, 60 + second],
    [0, 60],
    [10, 60],
    [10, first],
    [0, first],
  ],
];

const hung = (frame: readonly Ring[], side: "left" | "right" = "left"): Door => {
  const door = hangDoor(frame, side);
  if (!door) throw new Error("no hinge");
  return door;
};

/** Place of the hinge, its upper and lower end, and the width of the flap. */
const figures = ({ score, flapWidth }: Door): number[] => [score[0]![0], score[0]![1], score[1]![1], flapWidth];

// By hand: the hinge stands a whole number of tenths inside the edge, at most 4 mm, where the card is high enough; the flap
// with 1.5 mm of margin must lie on the card.
describe("hangDoor(frame, side)", () => {
  it("hinges a straight side 0.1 mm inside it, with a chamfered flap of 12 mm", () => {
    const door = hung(withCard(20));
    expect(figures(door)).toEqual([0.1, 0, 80, 12].map((v) => expect.closeTo(v, 9)));
    expect(door.score[1]![0]).toBe(door.score[0]![0]);
    expect(extentOf(door.outlines).left).toBeCloseTo(-11.9, 4);
    expect(extentOf(door.outlines).right).toBeCloseTo(100, 4);
    // Plate less hole, less a tenth at the side, and the flap: 12 mm wide, 80 mm high at the hinge and 76 mm at its edge.
    expect(areaOf(door.outlines)).toBeCloseTo(8000 - 3000 - 8 + 12 * 78, 2);
    const corners = door.outlines.flat().filter(([x]) => x < -11.8);
    expect(corners.map(([, y]) => y).sort((a, b) => a - b)).toEqual([2, 78].map((v) => expect.closeTo(v, 4)));
  });

  it.each([
    [13.7, 12],
    [13.5, 11.5],
    [10, 8],
    [6.65, 5],
  ])("on card of %d mm has a flap of %d mm", (card, flap) => {
    expect(hung(withCard(card)).flapWidth).toBe(flap);
  });

  it("hangs nothing where no flap of 5 mm lies on the card", () => {
    expect(hangDoor(withCard(6.55), "left")).toBeUndefined();
  });

  it("hinges the right side as the mirror image of the left", () => {
    const door = hung(plate(SQUARE, box(20, 15, 88, 65)), "right");
    // Card of 12 mm: 0.1 + 10 + 1.5 lies on it, half a millimetre more does not.
    expect(figures(door)).toEqual([99.9, 0, 80, 10].map((v) => expect.closeTo(v, 9)));
    expect(extentOf(door.outlines).right).toBeCloseTo(109.9, 4);
    const left = hung(withCard(20));
    const outer = (outlines: readonly Ring[]): number => Math.max(...outlines.map((ring) => Math.abs(shoelace(ring))));
    const sense = (outlines: readonly Ring[]): number =>
      Math.sign(shoelace(outlines.find((ring) => Math.abs(shoelace(ring)) === outer(outlines))!));
    expect(sense(door.outlines)).toBe(sense(left.outlines));
  });

  // A chord of a circle of radius R, b inside its edge, is 2·sqrt(2Rb − b²) long.
  it.each([
    { radius: 100, wanted: 40, inside: 2.1 },
    { radius: 30, wanted: 24, inside: 2.6 },
    { radius: 22.6, wanted: 18.08, inside: 1.9 },
    { radius: 12.5, wanted: 18, inside: 3.9 },
  ])("hinges a disc of $radius mm where its chord is $wanted mm long", ({ radius, inside }) => {
    const door = hung([circleRing(0, 0, radius, 7200)]);
    const half = Math.sqrt(2 * radius * inside - inside ** 2);
    expect(figures(door).slice(0, 3)).toEqual([inside - radius, -half, half].map((v) => expect.closeTo(v, 2)));
  });

  it("hangs nothing on a disc of 12 mm: its chord of 18 mm lies 4.06 mm inside", () => {
    expect(hangDoor([circleRing(0, 0, 12, 7200)], "left")).toBeUndefined();
  });

  // The card is 100/point mm higher for each millimetre further in: 40 mm are wanted, then 29 mm, then 18 mm.
  it.each([
    { point: 9, inside: 3.6 },
    { point: 12.5, inside: 3.7 },
    { point: 21, inside: 3.8 },
  ])("takes a shorter hinge on a point of $point mm", ({ point, inside }) => {
    const half = (50 * inside) / point;
    expect(figures(hung(pointed(point))).slice(0, 3)).toEqual(
      [inside, 50 - half, 50 + half].map((v) => expect.closeTo(v, 6)),
    );
  });

  it("hangs nothing on a longer point", () => {
    expect(hangDoor(pointed(23), "left")).toBeUndefined();
  });

  it.each([
    { first: 40, second: 50, from: 60, to: 110 },
    { first: 50, second: 45, from: 0, to: 50 },
    { first: 45, second: 45, from: 0, to: 45 },
  ])(
    "takes the longest stretch of card, the first among equals: $first and $second mm",
    ({ first, second, from, to }) => {
      expect(figures(hung(comb(first, second))).slice(1, 3)).toEqual([from, to].map((v) => expect.closeTo(v, 6)));
    },
  );

  it("keeps the whole frame but what bulges beyond the hinge", () => {
    const points: Point[] = circleRing(0, 0, 30, 7200);
    const door = hung([points]);
    const [x, from, to, flap] = figures(door) as [number, number, number, number];
    const angle = 2 * Math.acos(-x / 30);
    const cap = (900 / 2) * (angle - Math.sin(angle));
    expect(areaOf(door.outlines)).toBeCloseTo(Math.PI * 900 - cap + flap * (to - from - 2), 0);
    const { top, bottom, right } = extentOf(door.outlines);
    expect([top, bottom, right]).toEqual([-30, 30, 30].map((v) => expect.closeTo(v, 3)));
  });
});
