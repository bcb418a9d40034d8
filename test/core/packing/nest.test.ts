import { describe, expect, it } from "vitest";
import { classLayouts, seatParts } from "../../../src/core/class/class-sheets.ts";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import { grow, intersect } from "../../../src/core/geometry/area.ts";
import type { Point, Ring } from "../../../src/core/geometry/point.ts";
import { areaOfFields, nestParts } from "../../../src/core/packing/nest.ts";
import { packParts } from "../../../src/core/packing/pack.ts";
import type { Part } from "../../../src/core/window/part.ts";
import { fc } from "../../seed.ts";
import { readFixtureClass } from "../class/made-class.ts";
import { areaOf, extentOf } from "../geometry/plane.ts";
import { madePart } from "../plan/made-pattern.ts";

/** What is free on an A4, mm, and the free space between parts as the guide states it. */
const FIELD = { width: 194, height: 281 };
const APART = 4;

const card = (width: number, height: number, changes: Partial<Part> = {}): Part =>
  madePart("motif", "card", width, height, changes);

/** A ring of corners about (0, 0); inner ones run the other way. */
function round(across: number, down: number, corners: number, sense: 1 | -1 = 1): Ring {
  return Array.from({ length: corners }, (_, i): Point => {
    const angle = (sense * 2 * Math.PI * (i + 0.5)) / corners;
    return [(across / 2) * Math.cos(angle), (down / 2) * Math.sin(angle)];
  });
}

const frame = (across: number, down: number, rim: number, corners = 4): Part =>
  card(1, 1, {
    outlines: [round(across, down, corners), round(across - 2 * rim, down - 2 * rim, corners, -1)],
  });

const elbow = (size: number, thick: number): Part =>
  card(1, 1, {
    outlines: [
      [
        [0, 0],
        [size, 0],
        [size, thick],
        [thick, thick],
        [thick, size],
        [0, size],
      ],
    ],
  });

const anyPart = fc.oneof(
  fc.tuple(fc.integer({ min: 6, max: 190 }), fc.integer({ min: 6, max: 190 })).map(([w, h]) => card(w, h)),
  fc
    .tuple(
      fc.integer({ min: 60, max: 190 }),
      fc.integer({ min: 60, max: 190 }),
      fc.integer({ min: 3, max: 20 }),
      fc.integer({ min: 4, max: 12 }),
    )
    .map(([w, h, rim, corners]) => frame(w, h, rim, corners)),
  fc
    .tuple(fc.integer({ min: 40, max: 180 }), fc.integer({ min: 5, max: 30 }))
    .map(([size, thick]) => elbow(size, thick)),
);

const cut = (fields: ReturnType<typeof nestParts>["fields"]) =>
  fields.map((field) => field.map(({ part, place }) => part.outlines.map((ring) => ring.map(place))));

describe("nestParts(parts, width, height)", () => {
  it("never takes more fields than packParts, and as many pieces", () => {
    fc.assert(
      fc.property(fc.array(anyPart, { minLength: 1, maxLength: 14 }), (parts) => {
        const [plain, nested] = [packParts, nestParts].map((pack) => pack(parts, FIELD.width, FIELD.height));
        expect(nested!.fields.length).toBeLessThanOrEqual(plain!.fields.length);
        expect(nested!.fields.flat()).toHaveLength(parts.length);
        expect(nested!.tooLarge).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  // Independent check: areas are grown and cut by the polygon library, which the nesting does not use.
  it("keeps all parts in the field, off each other, and apart", () => {
    fc.assert(
      fc.property(fc.array(anyPart, { minLength: 2, maxLength: 10 }), (parts) => {
        for (const field of cut(nestParts(parts, FIELD.width, FIELD.height).fields))
          for (const [i, outlines] of field.entries()) {
            const { left, top, right, bottom } = extentOf(outlines);
            expect(Math.min(left, top)).toBeGreaterThan(-1e-6);
            expect(right).toBeLessThan(FIELD.width + 1e-6);
            expect(bottom).toBeLessThan(FIELD.height + 1e-6);
            const room = grow(outlines, APART - 0.05);
            for (const other of field.slice(i + 1)) expect(areaOf(intersect(room, other))).toBeLessThan(0.01);
          }
      }),
      { numRuns: 40 },
    );
  });

  it("turns and moves parts, and changes nothing else", () => {
    fc.assert(
      fc.property(fc.array(anyPart, { minLength: 1, maxLength: 6 }), (parts) => {
        for (const { part, place, x, y, width, height } of nestParts(parts, FIELD.width, FIELD.height).fields.flat()) {
          const there = part.outlines.map((ring) => ring.map(place));
          expect(areaOf(there)).toBeCloseTo(areaOf(part.outlines), 4);
          const box = extentOf(there);
          for (const [one, other] of [
            [box.left, x],
            [box.top, y],
            [box.width, width],
            [box.height, height],
          ])
            expect(one).toBeCloseTo(other!, 6);
        }
      }),
      { numRuns: 30 },
    );
  });

  // By hand: the frame fills the field but for a millimetre; within 4 mm of its opening of 80 mm, two cards of 70 by 30 lie above each other, and no third.
  it("lays small parts in the opening of a frame", () => {
    const side = 99 * Math.SQRT2;
    const parts = [frame(side, side, 9.5 * Math.SQRT2), card(70, 30), card(30, 70), card(70, 30)];
    const fields = (count: number) =>
      [packParts, nestParts].map((pack) => pack(parts.slice(0, count), 100, 100).fields.length);
    expect([2, 3, 4].map(fields)).toEqual([
      [2, 1],
      [2, 1],
      [2, 2],
    ]);
  });

  // By hand: each lies 16 mm or a little more further in than the one before: 90 + 3 × 16 mm.
  it("lays elbows into each other", () => {
    const parts = Array.from({ length: 4 }, () => elbow(90, 12));
    expect(packParts(parts, 150, 150).fields).toHaveLength(4);
    expect(nestParts(parts, 150, 150).fields).toHaveLength(1);
  });

  it("names what is larger than the field", () => {
    const large = card(300, 20);
    expect(nestParts([large, card(20, 20)], FIELD.width, FIELD.height)).toMatchObject({
      fields: [[{}]],
      tooLarge: [large],
    });
    expect(nestParts([], FIELD.width, FIELD.height).fields).toEqual([]);
  });
});

describe("the card of the fixtures’ class", () => {
  const plan = readFixtureClass();
  const parts = seatParts(fitSeats(plan.seats, plan.kits).fitting).filter(({ material }) => material === "card");
  const [layout] = classLayouts(parts, plan.sheets);

  it("takes up at most a quarter more than its parts are, and one sheet", () => {
    const all = parts.reduce((sum, { outlines, count }) => sum + count * areaOf(outlines), 0);
    const { width, height } = plan.sheets[0]!;
    expect(areaOfFields(layout!.sheets.map(({ places }) => places))).toBeLessThan(1.25 * all + width * height);
  });

  it("lies on fewer sheets than in boxes", () => {
    const boxes = packParts(parts, FIELD.width, FIELD.height);
    expect(layout!.sheets.length).toBeLessThanOrEqual(boxes.fields.length);
    expect(layout!.sheets).toHaveLength(3);
  });
});
