import { describe, expect, it } from "vitest";
import { type Point, type Ring, stretchesAt } from "../../core/geometry/plane.ts";
import { type Changes, DISCS } from "../../core/light/disc-kit.ts";
import { discPattern } from "../../core/light/read-disc-kit.ts";
import { frontAt, pictureSides } from "../../core/light/standing.ts";

const SCALE = DISCS.height / DISCS.units;
const STEP = 0.5;

/** The lowest height that is a mark and stands on the well. */
function discFloor(diameter: number, clearance: number): number {
  const half = diameter / 2 + clearance;
  const lowest = DISCS.head + DISCS.cy * SCALE + Math.sqrt((DISCS.well * SCALE) ** 2 - half ** 2);
  return Math.floor(lowest / STEP + 1e-9) * STEP;
}

const PLACES: readonly (readonly [name: string, changes: Changes])[] = [
  ["flat spine, ltr", {}],
  ["rounded spine, rtl", { book: { direction: "rtl" }, fit: { spine: "rounded" } }],
  ["borders of 2 and 48 leaves", { fit: { borderLeaves: [2, 48] } }],
  ["borders of 2 and 48 leaves, rtl", { fit: { borderLeaves: [2, 48] }, book: { direction: "rtl" } }],
];

const LIGHTS: readonly (readonly [diameter: number, height: number, clearance: number, setback: number])[] = [
  [38, 45, 1, 4],
  [20, 60, 0, 10],
  [55, 20, 2, 0],
];

// Source: closed form. The chord of a disc of radius r at height v below its middle is 2√(r² − v²); the light needs D + 2c.
describe.each(PLACES)("a light in a disc, %s", (_, changes) => {
  it.each(LIGHTS)("%d mm wide, %d mm high, clearance %d, setback %d", (diameter, height, clearance, setback) => {
    const pattern = discPattern({ ...changes, light: { diameter, height, clearance, setback } });
    const { light } = pattern;
    expect(light.floor).toBeCloseTo(discFloor(diameter, clearance), 6);
    const { left, right } = pictureSides(pattern);
    const middle = (left + right) / 2;
    expect(Math.abs(light.centre.x - middle)).toBeLessThan(0.002);
    const front = frontAt(pattern, middle);
    expect(Math.abs(light.centre.z - (front - setback - diameter / 2))).toBeLessThan(0.002);
  });
});

describe("a light off the middle", () => {
  const shapes = '<rect id="rim" x="5" y="5" width="190" height="190"/><circle id="well" cx="130" cy="90" r="55"/>';

  it.each(["ltr", "rtl"] as const)("stands at the middle of its region as the viewer sees it, %s", (direction) => {
    const pattern = discPattern({ shapes, book: { direction }, fit: { borderLeaves: [30, 4] } });
    const { left, right } = pictureSides(pattern);
    const x = left + ((right - left) * 130) / 200;
    expect(Math.abs(pattern.light.centre.x - x)).toBeLessThan(0.003);
    const z = frontAt(pattern, x) - pattern.light.setback - pattern.light.diameter / 2;
    expect(Math.abs(pattern.light.centre.z - z)).toBeLessThan(0.003);
  });
});

const REGIONS: Readonly<Record<string, Ring>> = {
  "a bell that narrows upward": [
    [90, 20],
    [110, 20],
    [125, 90],
    [190, 180],
    [10, 180],
    [75, 90],
  ],
  "an hourglass whose lower part is too low": [
    [30, 20],
    [170, 20],
    [165, 110],
    [110, 130],
    [180, 145],
    [175, 175],
    [30, 175],
    [25, 145],
    [95, 130],
    [35, 110],
  ],
  "a zigzag": [
    [20, 15],
    [185, 25],
    [120, 60],
    [180, 100],
    [125, 128],
    [160, 188],
    [40, 180],
    [70, 130],
    [15, 95],
    [80, 60],
  ],
  "a slope at its foot": [
    [10, 10],
    [190, 10],
    [190, 120],
    [10, 190],
  ],
};

/** The greatest mark at which the region's widest stretch is wide enough over all heights of the light; by trying all. */
function floorByTrying(region: Ring, need: number, height: number): number {
  const placed: Point[] = region.map(([x, y]) => [x * SCALE, DISCS.head + y * SCALE]);
  const grid = 0.02;
  const wide = (at: number): boolean => stretchesAt([placed], at).some(([from, to]) => to - from >= need);
  const rows = Array.from({ length: Math.round(216 / grid) }, (_, i) => wide((i + 0.5) * grid));
  for (let floor = 216; floor > 0; floor -= STEP) {
    const [from, to] = [Math.round((floor - height) / grid), Math.round(floor / grid)];
    if (from >= 0 && rows.slice(from, to).every(Boolean)) return floor;
  }
  throw new Error("no floor");
}

// Source: brute force over all marks and heights, with stretches of the region by the tests' own scan line.
describe.each(Object.entries(REGIONS))("the automatic floor in %s", (_, region) => {
  it.each([
    [24, 40],
    [30, 25],
    [14, 60],
  ])("for a light %d mm wide and %d mm high", (diameter, height) => {
    const shapes = `<rect id="rim" x="2" y="2" width="196" height="196"/><polygon id="well" points="${region.join(" ")}"/>`;
    const { light } = discPattern({ shapes, light: { diameter, height, clearance: 1 } });
    expect(light.floor).toBeCloseTo(floorByTrying(region, diameter + 2, height), 6);
  });
});

describe("a floor that the kit gives", () => {
  it.each([100, 125, 144.5])("is taken as it is: %d mm", (floor) => {
    const { light } = discPattern({ light: { height: 30, floor } });
    expect(light.floor).toBe(floor);
    expect(new Set(light.notches.map((notch) => notch.to))).toEqual(new Set([floor]));
  });

  it("may be the automatic one, with the same notches", () => {
    const automatic = discPattern().light;
    const given = discPattern({ light: { floor: automatic.floor } }).light;
    expect([given.centre, given.notches]).toEqual([automatic.centre, automatic.notches]);
  });
});
