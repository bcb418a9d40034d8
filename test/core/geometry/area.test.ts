import { ClipperOffset, EndType, JoinType } from "clipper2-ts/dist/Offset.js";
import { describe, expect, it } from "vitest";
import {
  type Area,
  areaOfRings,
  grow,
  intersect,
  outlinesOf,
  perimeterOf,
  rectangle,
  signedArea,
  sizeOf,
  subtract,
  unite,
} from "../../../src/core/geometry/area.ts";
import { simplify } from "../../../src/core/geometry/simplify.ts";
import { fc } from "../../seed.ts";
import {
  areaOf,
  circleRing,
  distanceTo,
  ellipsePerimeter,
  ellipseRing,
  isInside,
  lengthOf,
  type Point,
  pointsAlong,
  type Ring,
  shoelace,
} from "./plane.ts";

// Source: parallel curves of a convex curve at distance d have length L + 2πd and enclose A + Ld + πd² (Steiner; CRC Concise
// Encyclopedia of Mathematics, "Parallel Curve"). The ellipse's values were computed with mpmath.
describe("grow an ellipse of 70 by 50", () => {
  const ellipse: Area = [ellipseRing(0, 0, 70, 50, 2500)];
  const known = new Map([5, -5, 12, -12].map((distance) => [distance, grow(ellipse, distance)]));

  it.each([
    [5, 411.02961588354, 12972.182550642],
    [-5, 348.19776281174, 9176.0456571658],
  ])("by %d mm gives the parallel curve's length and area", (distance, length, area) => {
    const grown = known.get(distance)!;
    expect(grown).toHaveLength(1);
    expect(Math.abs(lengthOf(grown[0]!) - length)).toBeLessThan(2e-3);
    expect(Math.abs(areaOf(grown) - area)).toBeLessThan(0.02);
  });

  it.each([5, -5])("by %d mm is not the ellipse of half axes changed by it", (distance) => {
    const grown = known.get(distance)!;
    const naive = Math.PI * (70 + distance) * (50 + distance);
    expect(Math.abs(areaOf(grown) - naive)).toBeGreaterThan(12);
    expect(Math.abs(lengthOf(grown[0]!) - ellipsePerimeter(70 + distance, 50 + distance))).toBeGreaterThan(0.1);
  });

  it.each([5, -5, 12, -12])("by %d mm stays at that distance from it all round", (distance) => {
    for (const [i, point] of known.get(distance)![0]!.entries()) {
      if (i % 50 !== 0) continue;
      expect(Math.abs(distanceTo(point, ellipse) - Math.abs(distance))).toBeLessThan(2e-3);
    }
  });
});

// Source: calculus. An ellipse is bent most at the ends of its longer axis, with a radius of b²/a = 35.714; an inward parallel
// curve is smooth up to there. Further in it has a corner where the normals from both sides meet: sin² t = 0.265 at 40 mm.
describe("an ellipse of 70 by 50 drawn inward to where it is bent most, and further", () => {
  const ellipse: Area = [ellipseRing(0, 0, 70, 50, 1000)];
  const outline = 379.6136893476382;

  it.each([30, 35])("is the parallel curve at %d mm", (distance) => {
    const [drawn] = grow(ellipse, -distance);
    expect(Math.abs(lengthOf(drawn!) - (outline - 2 * Math.PI * distance))).toBeLessThan(2e-3);
    expect(Math.max(...drawn!.map(([x]) => x))).toBeCloseTo(70 - distance, 3);
  });

  it("ends in corners at 40 mm, no nearer to the ellipse than that", () => {
    const drawn = grow(ellipse, -40);
    expect(drawn).toHaveLength(1);
    expect(lengthOf(drawn[0]!)).toBeLessThan(outline - 80 * Math.PI - 0.5);
    const corner = Math.sqrt(1 - 0.265) * (70 - (40 * 50) / 56);
    expect(Math.max(...drawn[0]!.map(([x]) => x))).toBeCloseTo(corner, 2);
    for (const point of drawn[0]!.filter((_, i) => i % 40 === 0))
      expect(Math.abs(distanceTo(point, ellipse) - 40)).toBeLessThan(2e-3);
  });
});

describe("grow", () => {
  // Source: closed form. A square of side s grows to s² + 4sd + πd² with outline 4s + 2πd; it shrinks to a square of s − 2d.
  it("rounds corners outward and keeps them inward", () => {
    const square: Area = [rectangle(0, 0, 80, 80)];
    const grown = grow(square, 6);
    expect(Math.abs(areaOf(grown) - (6400 + 4 * 80 * 6 + 36 * Math.PI))).toBeLessThan(0.2);
    expect(Math.abs(lengthOf(grown[0]!) - (320 + 12 * Math.PI))).toBeLessThan(0.05);
    const shrunk = grow(square, -6);
    expect(areaOf(shrunk)).toBeCloseTo(68 * 68, 3);
    expect(lengthOf(shrunk[0]!)).toBeCloseTo(4 * 68, 3);
  });

  it("shrinks the hole of a ring while its rim grows", () => {
    const ring: Area = subtract([circleRing(0, 0, 40, 360)], [circleRing(0, 0, 25, 360)]);
    const grown = grow(ring, 4);
    expect(areaOf(grown)).toBeCloseTo(Math.PI * (44 ** 2 - 21 ** 2), -1);
    expect(grown).toHaveLength(2);
    for (const point of grown.flat()) expect(Math.abs(distanceTo(point, ring) - 4)).toBeLessThan(0.01);
  });

  it("leaves nothing of an area narrower than twice the distance, and all of it at distance 0", () => {
    expect(grow([rectangle(0, 0, 100, 9.9)], -5)).toEqual([]);
    expect(grow([rectangle(0, 0, 100, 10.1)], -5)).toHaveLength(1);
    const area: Area = [rectangle(0, 0, 3, 4)];
    expect(grow(area, 0)).toEqual(area);
  });

  it("breaks a dumbbell at its neck", () => {
    const dumbbell = unite(unite([circleRing(-30, 0, 20, 180)], [circleRing(30, 0, 15, 180)]), [
      rectangle(-30, -4, 30, 4),
    ]);
    expect(grow(dumbbell, -3.9)).toHaveLength(1);
    expect(grow(dumbbell, -4.1)).toHaveLength(2);
  });
});

describe("unite, subtract, intersect", () => {
  const discs: readonly Area[] = [[circleRing(0, 0, 20, 4000)], [circleRing(20, 0, 20, 4000)]];
  // Source: closed form. Two circles of radius r at distance r share r²(2π/3 − √3/2).
  const lens = 400 * ((2 * Math.PI) / 3 - Math.sqrt(3) / 2);

  it("give the areas of two discs", () => {
    const [a, b] = discs as [Area, Area];
    const disc = 400 * Math.PI;
    expect(Math.abs(areaOf(intersect(a, b)) - lens)).toBeLessThan(0.01);
    expect(Math.abs(areaOf(unite(a, b)) - (2 * disc - lens))).toBeLessThan(0.01);
    expect(Math.abs(areaOf(subtract(a, b)) - (disc - lens))).toBeLessThan(0.01);
  });

  it("agree with a point's own membership", () => {
    const [a, b] = discs as [Area, Area];
    const [both, either, first] = [intersect(a, b), unite(a, b), subtract(a, b)];
    for (let x = -19.3; x < 40; x += 3.7) {
      for (let y = -19.1; y < 20; y += 3.3) {
        const point: Point = [x, y];
        const [inA, inB] = [Math.hypot(x, y) < 20, Math.hypot(x - 20, y) < 20];
        expect([isInside(point, both), isInside(point, either), isInside(point, first)]).toEqual([
          inA && inB,
          inA || inB,
          inA && !inB,
        ]);
      }
    }
  });
});

// Source: SVG 2, painting, fill-rule figures: the star's area under each rule by exact fractions; rings of radius 107 and 49.
describe("areaOfRings", () => {
  const star: Ring = [
    [250, 75],
    [323, 301],
    [131, 161],
    [369, 161],
    [177, 301],
  ];

  it("follows the fill rule of a star that crosses itself", () => {
    expect(areaOf(areaOfRings([star], "nonzero"))).toBeCloseTo(17523.230855, 1);
    const tips = areaOfRings([star], "evenodd");
    expect(Math.abs(tips.reduce((sum, ring) => sum + shoelace(ring), 0))).toBeCloseTo(12108.46171, 1);
  });

  it("follows the fill rule of two rings that run alike or opposite", () => {
    const [outer, inner] = [circleRing(0, 0, 107, 9000), circleRing(0, 0, 49, 9000)];
    const alike = [outer, inner];
    const opposite = [outer, inner.toReversed()];
    expect(areaOf(areaOfRings(alike, "nonzero"))).toBeCloseTo(35968.094, 1);
    expect(areaOf(areaOfRings(alike, "evenodd"))).toBeCloseTo(28425.13, 1);
    expect(areaOf(areaOfRings(opposite, "nonzero"))).toBeCloseTo(28425.13, 1);
    expect(areaOf(areaOfRings(opposite, "evenodd"))).toBeCloseTo(28425.13, 1);
  });
});

describe("measures", () => {
  // By hand: a plate of 10 by 6 with a hole of 4 by 2.
  it("take holes off the size, add them to the perimeter, and know which way a ring runs", () => {
    const [plate, hole] = [rectangle(1, 2, 11, 8), rectangle(3, 4, 7, 6)];
    expect([signedArea(plate), signedArea(hole.toReversed()), signedArea([])]).toEqual([60, -8, 0]);
    for (const area of [
      [plate, hole.toReversed()],
      [hole, plate.toReversed()],
    ]) {
      expect(sizeOf(area)).toBe(52);
      expect(perimeterOf(area)).toBe(32 + 12);
      const { outer, holes } = outlinesOf(area);
      expect([outer.map((one) => Math.abs(signedArea(one))), holes.map((one) => Math.abs(signedArea(one)))]).toEqual([
        [60],
        [8],
      ]);
    }
    expect(rectangle(1, 2, 11, 8)).toEqual([
      [1, 2],
      [11, 2],
      [11, 8],
      [1, 8],
    ]);
  });

  it("size and perimeter agree with the shoelace and the sum of sides, holes taken off", () => {
    const ring: Area = subtract([circleRing(3, 4, 40)], [rectangle(-10, -5, 20, 10)]);
    expect(sizeOf(ring)).toBeCloseTo(areaOf(ring), 6);
    expect(perimeterOf(ring)).toBeCloseTo(
      ring.reduce((sum, one) => sum + lengthOf(one), 0),
      6,
    );
    expect(Math.sign(signedArea(ring[0]!))).toBe(Math.sign(shoelace(ring[0]!)));
    const { outer, holes } = outlinesOf(ring);
    expect([outer.length, holes.length]).toEqual([1, 1]);
    expect(Math.abs(shoelace(outer[0]!))).toBeGreaterThan(Math.abs(shoelace(holes[0]!)));
  });
});

describe("simplify", () => {
  it("keeps every old point within the tolerance and drops most of a fine circle", () => {
    const fine = circleRing(0, 0, 60, 5000);
    const [thin] = simplify([fine], 0.01);
    expect(thin!.length).toBeLessThan(400);
    for (const point of fine) expect(distanceTo(point, [thin!])).toBeLessThanOrEqual(0.0101);
    for (const point of pointsAlong(thin!, 0.3)) expect(Math.abs(Math.hypot(...point) - 60)).toBeLessThan(0.0102);
  });

  // Source: Ramer-Douglas-Peucker with tolerance 1; input of Rosetta Code's task, result computed with simplify-js too.
  it("agrees with a published line, closed far away so that it stays apart", () => {
    const line: Point[] = [
      [0, 0],
      [1, 0.1],
      [2, -0.1],
      [3, 5],
      [4, 6],
      [5, 7],
      [6, 8.1],
      [7, 9],
      [8, 9],
      [9, 9],
    ];
    const [ring] = simplify([[...line, [9, 100], [0, 100]]], 1);
    for (const point of [line[0]!, line[2]!, line[3]!, line[7]!, line[9]!]) expect(ring).toContainEqual([...point]);
    for (const point of [line[1]!, line[4]!, line[5]!, line[6]!, line[8]!]) expect(ring).not.toContainEqual([...point]);
  });
});

describe("grow any area", () => {
  const coordinate = fc.integer({ min: -300, max: 300 }).map((quarters) => quarters / 4);
  const corners = fc.array(fc.tuple(coordinate, coordinate), { minLength: 3, maxLength: 14 });
  // Round outlines with bays, which a shrinking takes away or cuts through.
  const wavy = fc
    .record({
      points: fc.integer({ min: 40, max: 300 }),
      waves: fc.integer({ min: 0, max: 9 }),
      deep: fc.integer({ min: 0, max: 60 }),
      radius: fc.integer({ min: 8, max: 60 }),
    })
    .map(({ points, waves, deep, radius }) =>
      Array.from({ length: points }, (_, i): readonly [number, number] => {
        const angle = (2 * Math.PI * i) / points;
        const away = radius * (1 + (deep / 100) * Math.sin(waves * angle));
        return [away * Math.cos(angle), away * Math.sin(angle)];
      }),
    );
  const rings = fc.oneof(
    fc.array(corners, { minLength: 1, maxLength: 3 }),
    wavy.map((ring) => [ring]),
  );

  it("is what the polygon library offsets it to, whichever way it runs", () => {
    fc.assert(
      fc.property(rings, fc.integer({ min: -48, max: 48 }), fc.boolean(), (outlines, quarters, turned) => {
        const area = areaOfRings(outlines, "nonzero").map((ring) => (turned ? [...ring].reverse() : ring));
        const [mine, theirs] = [grow(area, quarters / 4), offsetByLibrary(area, quarters / 4)];
        // Two hundred-thousandths of a millimetre along all outlines: both round to one.
        const least = 2e-5 * (perimeterOf(theirs) + 1);
        expect(sizeOf(subtract(mine, theirs)) + sizeOf(subtract(theirs, mine))).toBeLessThan(least);
      }),
      { numRuns: 300 },
    );
  });
});

function offsetByLibrary(area: Area, distance: number): Area {
  const offset = new ClipperOffset(2, 400);
  const paths = area.map((ring) => ring.map(([x, y]) => ({ x: Math.round(x * 1e5), y: Math.round(y * 1e5) })));
  offset.addPaths(paths, JoinType.Round, EndType.Polygon);
  const grown: { x: number; y: number }[][] = [];
  offset.execute(distance * 1e5, grown);
  return grown.map((path) => path.map(({ x, y }) => [x / 1e5, y / 1e5] as const));
}
