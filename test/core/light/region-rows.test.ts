import { describe, expect, it } from "vitest";
import { regionRows } from "../../../src/core/light/region-rows.ts";
import { box } from "../window/made.ts";

const shape = (level: number, left: number, top: number, right: number, bottom: number) => ({
  level,
  rule: "nonzero" as const,
  rings: [box(left, top, right, bottom)],
});

/** 20 by 10 units; displayed 5 mm to a unit across and 4 mm down, 30 mm below the head. */
const MAP = {
  width: 20,
  height: 10,
  background: 2,
  shapes: [shape(3, 2, 2, 6, 8), shape(3, 9, 4, 17, 8), shape(3, 1, 6, 5, 7), shape(1, 10, 5, 12, 6)],
};
const PLACE = { head: 30, height: 40, width: 100 };

// By hand: a height of y units lies 30 + 4y mm below the head.
describe("regionRows(map, level, box)", () => {
  const rows = regionRows(MAP, 3, PLACE);

  it.each([
    ["above the level", 37.9, undefined],
    ["in its only stretch", 44, { from: 10, to: 30 }],
    ["in the wider of two, the second", 48, { from: 45, to: 85 }],
    ["where another level parts it", 52, { from: 60, to: 85 }],
    ["where two shapes join", 56, { from: 45, to: 85 }],
    ["below the level", 62.1, undefined],
    ["above the picture", 29.9, undefined],
    ["below the picture", 70.1, undefined],
  ])("is the widest stretch of the level, %s", (_, height, run) => {
    const found = rows(height);
    if (!run) expect(found).toBeUndefined();
    else expect([found!.from, found!.to]).toEqual([expect.closeTo(run.from, 9), expect.closeTo(run.to, 9)]);
    expect(rows(height)).toBe(found);
  });

  it("is the first of two stretches alike", () => {
    const twins = { ...MAP, shapes: [shape(3, 2, 0, 6, 10), shape(3, 9, 0, 13, 10)] };
    expect(regionRows(twins, 3, PLACE)(50)).toEqual({ from: 10, to: 30 });
  });

  it("is read up to the picture's own edges", () => {
    const ground = regionRows(MAP, 2, PLACE);
    expect(ground(30)).toEqual({ from: 0, to: 100 });
    expect(ground(70)).toEqual({ from: 0, to: 100 });
    expect([ground(29.9), ground(70.1)]).toEqual([undefined, undefined]);
  });

  it("is read once while level and place stay, and anew when they change", () => {
    const first = regionRows(MAP, 3, PLACE);
    expect(regionRows(MAP, 3, { ...PLACE })).toBe(first);
    expect(regionRows(MAP, 1, PLACE)(52)).toEqual({ from: 50, to: 60 });
    expect(regionRows(MAP, 3, { ...PLACE, head: 10 })(24)).toEqual({ from: 10, to: 30 });
  });

  it("is the same where rows that may be asked for next are read with it", () => {
    const other = { ...PLACE, head: 20 };
    const [apart, together] = [regionRows({ ...MAP }, 3, other), regionRows({ ...MAP }, 3, other)];
    const heights = [34, 42, 38, 46];
    const alone = heights.map((height) => apart(height));
    expect(together(34, [42, 38])).toEqual(alone[0]);
    expect(heights.map((height) => together(height))).toEqual(alone);
  });
});
