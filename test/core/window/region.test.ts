import { describe, expect, it } from "vitest";
import { outlineAndHole, shownOnFront, visibleRegion } from "../../../src/core/window/region.ts";
import { areaOf, type Ring } from "../geometry/plane.ts";
import { box, plate, sidesOf } from "./made.ts";

/** 5 mm to a unit, 30 mm below the head. */
const PLACE = { head: 30, height: 50, width: 100 };
const shape = (level: number, ...rings: Ring[]) => ({ level, rule: "evenodd" as const, rings });

/** A plate of level 1 with a well of level 3 in it, in which an islet of level 1 stands. */
const MAP = {
  width: 20,
  height: 10,
  background: 2,
  shapes: [shape(1, box(2, 1, 12, 9)), shape(3, box(4, 3, 8, 6)), shape(1, box(6, 4, 7, 5))],
};

describe("visibleRegion(map, level, box)", () => {
  it("is what later shapes leave of a level, where the picture lies on the front", () => {
    const region = visibleRegion(MAP, 1, PLACE);
    expect(areaOf(region)).toBeCloseTo(25 * (80 - 12 + 1), 3);
    expect(sidesOf(region)).toEqual([10, 35, 60, 75]);
    expect(areaOf(visibleRegion(MAP, 3, PLACE))).toBeCloseTo(25 * 11, 3);
  });

  it("is the picture's box less all shapes for the background", () => {
    const region = visibleRegion(MAP, 2, PLACE);
    expect(areaOf(region)).toBeCloseTo(25 * 120, 3);
    expect(sidesOf(region)).toEqual([0, 30, 100, 80]);
  });

  it("ends at the picture's box, and is empty where the level shows nowhere", () => {
    const beyond = { ...MAP, shapes: [shape(1, box(-4, 7, 30, 14))] };
    expect(sidesOf(visibleRegion(beyond, 1, PLACE))).toEqual([0, 65, 100, 80]);
    const covered = { ...MAP, shapes: [shape(1, box(2, 1, 12, 9)), shape(3, box(0, 0, 20, 10))] };
    expect(visibleRegion(covered, 1, PLACE)).toEqual([]);
    expect(visibleRegion(MAP, 4, PLACE)).toEqual([]);
  });

  it("is filled by the shape's own rule", () => {
    const twice = (rule: "evenodd" | "nonzero") => ({
      ...MAP,
      shapes: [{ level: 1, rule, rings: [box(2, 1, 12, 9), box(4, 3, 8, 6)] }],
    });
    expect(areaOf(visibleRegion(twice("evenodd"), 1, PLACE))).toBeCloseTo(25 * 68, 3);
    expect(areaOf(visibleRegion(twice("nonzero"), 1, PLACE))).toBeCloseTo(25 * 80, 3);
  });
});

describe("shownOnFront(map, level, box)", () => {
  const nearly = (area: readonly Ring[]) =>
    area.map((ring) => ring.map((point) => point.map((mm) => expect.closeTo(mm, 4))));
  const cutThere = (level: number, place: typeof PLACE) => {
    const { outline, hole } = outlineAndHole(visibleRegion(MAP, level, place))!;
    return { outline: nearly(outline), hole: nearly(hole) };
  };

  it.each([
    ["lower", { ...PLACE, head: 31 }],
    ["drawn out", { head: 3.7, height: 211.3, width: 77.7 }],
    ["as wide but for what a solved width loses in computing", { ...PLACE, width: 100 - 6e-14 }],
  ])("is what is cut where the picture lies: %s", (_, place) => {
    expect(shownOnFront(MAP, 1, place)).toEqual(cutThere(1, place));
    expect(shownOnFront(MAP, 3, place)).toEqual(cutThere(3, place));
    expect(shownOnFront(MAP, 4, place)).toBeUndefined();
  });

  it("does not tell apart what a solved width loses in computing", () => {
    expect(shownOnFront(MAP, 1, { ...PLACE, width: 100 - 6e-14 })).toEqual(shownOnFront(MAP, 1, PLACE));
  });

  it("cuts a picture once, wherever it lies", () => {
    let reads = 0;
    const watched = {
      ...MAP,
      get shapes() {
        reads += 1;
        return MAP.shapes;
      },
    };
    shownOnFront(watched, 1, PLACE);
    const once = reads;
    shownOnFront(watched, 1, { head: 3.7, height: 211.3, width: 77.7 });
    expect([once, reads]).toEqual([1, 1]);
  });
});

describe("outlineAndHole(region)", () => {
  const rings = (region: readonly Ring[]) => {
    const found = outlineAndHole(region)!;
    return [found.outline, found.hole].map((one) => [one.length, sidesOf(one), areaOf(one)]);
  };

  it("takes the greatest outline and the greatest hole, islets in it left aside, in any order", () => {
    const [small, large] = [box(0, 0, 30, 30), box(100, 0, 160, 60)];
    const holes = [box(105, 5, 110, 10), box(120, 10, 150, 50), box(112, 5, 117, 10)].map((one) => [...one].reverse());
    const islet = box(130, 20, 140, 30);
    const expected = [
      [1, [100, 0, 160, 60], expect.closeTo(3600, 3)],
      [1, [120, 10, 150, 50], expect.closeTo(1200, 3)],
    ];
    expect(rings([small, large, ...holes, islet])).toEqual(expected);
    expect(rings([islet, holes[1]!, large, holes[0]!, holes[2]!, small])).toEqual(expected);
  });

  it("takes the outline for the hole where there is none, and nothing of nothing", () => {
    const [outline, hole] = rings([box(0, 0, 30, 20)]);
    expect(hole).toEqual(outline);
    expect(outline).toEqual([1, [0, 0, 30, 20], 600]);
    expect(outlineAndHole([])).toBeUndefined();
  });

  it("takes the first among outlines alike", () => {
    const first = outlineAndHole([...plate(box(0, 0, 40, 40), box(5, 5, 9, 9)), box(50, 0, 90, 40)])!;
    expect(sidesOf(first.outline)).toEqual([0, 0, 40, 40]);
  });
});
