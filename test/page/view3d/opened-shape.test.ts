import { describe, expect, it } from "vitest";
import { openedShape } from "../../../src/page/view3d/opened-shape.ts";
import { shapeAt } from "../../../src/page/view3d/pose.ts";
import { openingWords } from "../../../src/words/round.ts";
import { dataOf, publishedDemo } from "./made.ts";

const pattern = publishedDemo("harbour-moon");
const data = dataOf(pattern);
const radians = (degrees: number) => (degrees * Math.PI) / 180;

describe("openedShape(data, opening)", () => {
  it("is the published fit at the kit's own opening, also where a slider of whole degrees stands a little off it", () => {
    for (const opening of [data.fit.opening, data.fit.opening + radians(0.4)]) {
      const shape = openedShape(data, opening);
      expect(shape).toMatchObject({ opening: data.fit.opening, own: true, along: false, heldOpenTo: undefined });
      expect(shape.width).toBeCloseTo(pattern.fit.width, 2);
      expect(shape.stretch).toBeCloseTo(pattern.fit.stretch, 9);
      expect(shape.window).toBeUndefined();
    }
    expect(openingWords(openedShape(data, data.fit.opening), "mm")).toBe(
      "Opening 60°, the kit’s own. The picture is 130\u00a0mm wide, its true shape.",
    );
  });

  it("is wider or narrower at another opening, for which the window is not cut", () => {
    expect(openedShape(data, radians(90))).toMatchObject({
      own: false,
      ...shapeAt(data, radians(90)),
      window: "misfit",
    });
    expect(openedShape(data, radians(40))).toMatchObject({ ...shapeAt(data, radians(40)), window: "hidden" });
    const { insert, ...open } = data;
    expect(insert).toBeDefined();
    expect(openedShape(open, radians(40)).window).toBeUndefined();
  });

  it("knows where the flaps hold the book open", () => {
    expect(openedShape(data, radians(25)).heldOpenTo).toBe(data.fit.restingOpening);
    expect(Math.round((data.fit.restingOpening * 180) / Math.PI)).toBe(31);
    expect(openedShape(data, radians(35)).heldOpenTo).toBeUndefined();
  });
});
