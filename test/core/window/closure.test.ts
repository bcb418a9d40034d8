import { describe, expect, it } from "vitest";
import { closureOf } from "../../../src/core/window/closure.ts";
import { lengthOf, type Ring, shoelace, sidesOf } from "../geometry/plane.ts";
import { box, plate } from "./made.ts";

/** Card 40 mm wide at the left of the hole and 10 mm at its right; the middle height is 70. */
const FRAME = plate(box(0, 10, 200, 130), box(40, 30, 190, 110));

const hinged = (x: number) =>
  [
    [x, 10],
    [x, 130],
  ] as const;

// By hand. The tab's glued end is 12 mm; 8 mm of it and the card up to the button are gone along twice, and 90 mm are for the knot.
describe("closureOf(frame, hinge, score)", () => {
  it.each([
    { hinge: "left", score: 2, button: 195, glue: 196, string: 2 * (8 + 5) + 90 },
    { hinge: "right", score: 198, button: 20, glue: 4, string: 2 * (8 + 20) + 90 },
  ] as const)("lies opposite a hinge at the $hinge on the middle height", ({ hinge, score, button, glue, string }) => {
    const closure = closureOf(FRAME, hinge, hinged(score));
    expect(closure.stringLength).toBe(string);
    expect(closure.baseMarks).toEqual([
      {
        line: [
          [glue, 63],
          [glue, 77],
        ],
        kind: "tab-behind",
      },
    ]);
    expect(closure.doorMarks).toEqual([
      {
        line: [
          [button - 3, 70],
          [button + 3, 70],
        ],
        kind: "button",
      },
      {
        line: [
          [button, 67],
          [button, 73],
        ],
        kind: undefined,
      },
    ]);
  });

  describe("its tab", () => {
    const { tab } = closureOf(FRAME, "left", hinged(2));
    const [outline, hole] = tab.outlines as [Ring, Ring];
    const away = ([x, y]: readonly [number, number]): number => Math.hypot(x - 19, y - 7);

    it("is 26 by 14 mm, its free end a half circle, with the glued end marked", () => {
      expect(outline[0]).toEqual([0, 0]);
      expect(outline.at(-1)).toEqual([0, 14]);
      const round = outline.slice(1, -1);
      for (const point of round) expect(away(point)).toBeCloseTo(7, 9);
      expect(round[0]).toEqual([19, 0].map((v) => expect.closeTo(v, 9)));
      expect(round.at(-1)).toEqual([19, 14].map((v) => expect.closeTo(v, 9)));
      // Half a regular polygon of 80 corners beside a rectangle of 19 by 14.
      expect(Math.abs(shoelace(outline))).toBeCloseTo(19 * 14 + 20 * 49 * Math.sin(Math.PI / 40), 6);
      expect(tab).toMatchObject({ id: "closure-tab", kind: "closure-tab", material: "card", count: 1, frame: "own" });
      expect(tab.scores).toEqual([]);
      expect(tab.marks).toEqual([
        {
          line: [
            [12, 0],
            [12, 14],
          ],
          kind: "glue-behind-frame",
        },
      ]);
    });

    it("has a round hole of 3 mm in the middle of that half circle, which runs the other way", () => {
      for (const point of hole) expect(away(point)).toBeCloseTo(1.5, 9);
      for (const [a, b] of sidesOf(hole)) {
        expect(Math.hypot(b[0] - a[0], b[1] - a[1])).toBeCloseTo(3 * Math.sin(Math.PI / 32), 9);
      }
      expect(lengthOf(hole)).toBeCloseTo(96 * Math.sin(Math.PI / 32), 6);
      expect(Math.sign(shoelace(hole))).toBe(-Math.sign(shoelace(outline)));
    });
  });
});
