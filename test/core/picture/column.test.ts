import { describe, expect, it } from "vitest";
import { readRuns } from "../../../src/core/picture/column.ts";
import { levelExtents } from "../../../src/core/picture/level-extents.ts";
import type { LevelMap, LevelShape } from "../../../src/core/picture/level-map.ts";
import { circleRing, type Ring } from "../geometry/plane.ts";
import { box } from "../window/made.ts";

const shape = (level: number, ...rings: Ring[]): LevelShape => ({ level, rule: "nonzero", rings });
const evenOdd = (level: number, ...rings: Ring[]): LevelShape => ({ level, rule: "evenodd", rings });
const mapOf = (...shapes: LevelShape[]): LevelMap => ({ width: 100, height: 50, background: 2, shapes });

/** Runs as text: levels with where each ends. */
const read = (map: LevelMap, x: number): string =>
  readRuns(map, [x])[0]!
    .map(({ from, to, level }, i, runs) => {
      expect(from).toBe(i === 0 ? 0 : runs[i - 1]!.to);
      return `${level}:${Math.round(to * 1e6) / 1e6}`;
    })
    .join(" ");

// By hand; a column that runs through a corner reads the picture just right of it.
describe("readRuns(map, x)", () => {
  const plate = mapOf(shape(1, box(20, 10, 60, 30)));

  it.each([
    [0, "2:50"],
    [19.999, "2:50"],
    [20, "2:10 1:30 2:50"],
    [40, "2:10 1:30 2:50"],
    [59.999, "2:10 1:30 2:50"],
    [60, "2:50"],
    [100, "2:50"],
  ])("reads a plate from 20 to 60 at %d: %s", (x, runs) => {
    expect(read(plate, x)).toBe(runs);
    expect(read(mapOf(shape(1, box(20, 10, 60, 30).toReversed())), x)).toBe(runs);
  });

  it("has only background left and right of the box, and no more than the box", () => {
    const beyond = mapOf(shape(1, box(-50, -20, 150, 30)));
    expect([-0.001, 0, 50, 100, 100.001].map((x) => read(beyond, x))).toEqual([
      "2:50",
      "1:30 2:50",
      "1:30 2:50",
      "1:30 2:50",
      "2:50",
    ]);
    expect(read(mapOf(shape(3, box(0, 40, 100, 90))), 7)).toBe("2:40 3:50");
    expect(read(mapOf(shape(3, box(0, 60, 100, 90))), 7)).toBe("2:50");
  });

  it("follows slanting sides exactly", () => {
    const roof: Ring = [
      [10, 40],
      [50, 0],
      [90, 40],
    ];
    expect(read(mapOf(shape(1, roof)), 20)).toBe("2:30 1:40 2:50");
    expect(read(mapOf(shape(1, roof)), 50)).toBe("1:40 2:50");
    expect(read(mapOf(shape(1, roof)), 75)).toBe("2:25 1:40 2:50");
  });

  it("lays later shapes over earlier ones, and joins what has one level", () => {
    const bars = (...levels: number[]) =>
      mapOf(...levels.map((level, i) => shape(level, box(0, 10 * i + 5, 100, 10 * i + 20))));
    expect(read(bars(1, 3, 1), 1)).toBe("2:5 1:15 3:25 1:40 2:50");
    expect(read(bars(1, 1, 3), 1)).toBe("2:5 1:25 3:40 2:50");
    expect(read(bars(2, 1, 2), 1)).toBe("2:15 1:25 2:50");
    expect(read(mapOf(shape(1, box(0, 0, 100, 50)), shape(3, box(0, 20, 100, 30))), 1)).toBe("1:20 3:30 1:50");
    expect(read(mapOf(shape(1, box(0, 20, 100, 30)), shape(3, box(0, 0, 100, 50))), 1)).toBe("3:50");
    expect(read(mapOf(shape(1, box(0, 0, 100, 20)), shape(3, box(0, 20, 100, 50))), 1)).toBe("1:20 3:50");
  });

  // Source: SVG 2, painting, "Winding rule".
  it.each([
    ["alike", box(10, 20, 90, 30), "1:40", "1:20 2:30 1:40"],
    ["opposite", box(10, 20, 90, 30).toReversed(), "1:20 2:30 1:40", "1:20 2:30 1:40"],
  ])("fills two rings that run %s by the shape's rule", (_, inner, nonzero, evenodd) => {
    const outer = box(0, 0, 100, 40);
    expect(read(mapOf(shape(1, outer, inner)), 50)).toBe(`${nonzero} 2:50`);
    expect(read(mapOf(evenOdd(1, outer, inner)), 50)).toBe(`${evenodd} 2:50`);
  });

  it("fills where three rings overlap by their count", () => {
    const rings = [box(0, 0, 100, 40), box(0, 10, 100, 50), box(0, 20, 100, 30)];
    expect(read(mapOf(shape(3, ...rings)), 50)).toBe("3:50");
    expect(read(mapOf(evenOdd(3, ...rings)), 50)).toBe("3:10 2:20 3:30 2:40 3:50");
  });

  it("reads a disc's chord at every column", () => {
    const disc = mapOf(shape(1, circleRing(50, 25, 20, 20_000)));
    for (let x = 30.37; x < 70; x += 0.71) {
      const half = Math.sqrt(400 - (x - 50) ** 2);
      const [, run] = readRuns(disc, [x])[0]!;
      expect([run!.from, run!.to]).toEqual([expect.closeTo(25 - half, 3), expect.closeTo(25 + half, 3)]);
    }
  });

  it("prepares a picture once", () => {
    let asked = 0;
    const counted: LevelMap = {
      ...plate,
      get shapes() {
        asked += 1;
        return plate.shapes;
      },
    };
    expect([40, 60].map((x) => read(counted, x))).toEqual(["2:10 1:30 2:50", "2:50"]);
    expect(asked).toBe(1);
  });
});

// Sampled at 512 places: a level's side is met to a 1/512 of the width.
describe("levelExtents(map)", () => {
  it("tells from where to where each level shows, and nothing of one that does not", () => {
    const map = mapOf(shape(1, box(25, 10, 50, 30)), shape(1, box(62.5, 10, 75, 30)), shape(4, box(0, 0, 12.5, 50)));
    const [first, second, third, fourth] = levelExtents(map);
    expect(first).toEqual([(128 + 0.5) / 512, (383 + 0.5) / 512]);
    expect(second).toEqual([(64 + 0.5) / 512, (511 + 0.5) / 512]);
    expect(third).toBeUndefined();
    expect(fourth).toEqual([0.5 / 512, (63 + 0.5) / 512]);
    expect(levelExtents(map)).toBe(levelExtents(map));
  });
});
