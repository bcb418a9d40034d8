import { describe, expect, it } from "vitest";
import { extentOf, packParts } from "../../../src/core/packing/pack.ts";
import type { Part } from "../../../src/core/window/part.ts";
import { madePart } from "../plan/made-pattern.ts";

const card = (width: number, height: number, changes: Partial<Part> = {}): Part =>
  madePart("motif", "card", width, height, changes);

describe("packParts(parts, width, height)", () => {
  // By hand: each set fills its fields; free space between is 4 mm.
  it.each([
    [
      "two beside each other",
      [
        [48, 100],
        [48, 100],
      ],
      100,
      100,
      1,
    ],
    [
      "two that want the space between them",
      [
        [48.5, 100],
        [48, 100],
      ],
      100,
      100,
      2,
    ],
    [
      "two above each other",
      [
        [100, 48],
        [100, 48],
      ],
      100,
      100,
      1,
    ],
    ["one that is turned to fit", [[30, 100]], 100, 30, 1],
    [
      "a turned one beside another",
      [
        [30, 60],
        [60, 66],
      ],
      60,
      100,
      1,
    ],
    [
      "four in the corners, no two alike",
      [
        [40, 56],
        [56, 40],
        [40, 56],
        [56, 40],
      ],
      100,
      100,
      1,
    ],
    ["none", [], 100, 100, 0],
  ] as const)("takes the fewest fields for %s", (_, sizes, width, height, fields) => {
    const parts = sizes.map(([w, h], i) => card(w, h, { id: `${i}` }));
    const packing = packParts(parts, width, height);
    expect(packing.fields).toHaveLength(fields);
    expect(packing.tooLarge).toEqual([]);
    for (const { x, y, width: w, height: h } of packing.fields.flat()) {
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
      expect(x + w).toBeLessThanOrEqual(width);
      expect(y + h).toBeLessThanOrEqual(height);
    }
  });

  it("packs a part as often as its count, and names it as often where it is too large", () => {
    expect(packParts([card(20, 20, { count: 3 })], 100, 100).fields.flat()).toHaveLength(3);
    expect(packParts([card(120, 20, { count: 2 })], 100, 100)).toMatchObject({ fields: [], tooLarge: [{}, {}] });
  });

  // By hand: a part of 30 × 60 at 7, 11 of its own frame; turned by a quarter, its foot lies to the left.
  it("maps the part's frame to where it lies, upright or turned by a quarter", () => {
    const place = (width: number, height: number) => packParts([card(30, 60)], width, height).fields[0]![0]!;
    const upright = place(30, 60);
    expect([upright.place([7, 11]), upright.place([37, 71]), upright.place([37, 11])]).toEqual([
      [0, 0],
      [30, 60],
      [30, 0],
    ]);
    const turned = place(60, 30);
    expect([turned.place([7, 71]), turned.place([37, 11]), turned.place([7, 11])]).toEqual([
      [0, 0],
      [60, 30],
      [60, 0],
    ]);
    expect([turned.width, turned.height]).toEqual([60, 30]);
  });

  // A field of A4, 194 × 281 mm; the set was found by trying random ones.
  it("lays on shelves what no order of free rectangles has room for", () => {
    const sizes = [
      [114, 162],
      [138, 134],
      [131, 114],
      [164, 29],
      [163, 131],
    ] as const;
    expect(
      packParts(
        sizes.map(([w, h]) => card(w, h)),
        194,
        281,
      ).fields,
    ).toHaveLength(2);
  });

  // Sets that lie on one A4, each with one order alone: found by trying random sets with each order and on shelves.
  it.each([
    [
      "area",
      [
        [130, 150],
        [20, 80],
        [20, 120],
        [30, 80],
        [140, 140],
      ],
    ],
    [
      "longer side",
      [
        [150, 60],
        [30, 100],
        [100, 130],
        [50, 90],
        [160, 60],
        [140, 20],
      ],
    ],
    [
      "width",
      [
        [50, 80],
        [110, 30],
        [150, 50],
        [110, 140],
        [50, 130],
        [50, 20],
        [50, 160],
      ],
    ],
  ] as const)("tries parts in the order of their %s", (_, sizes) => {
    expect(
      packParts(
        sizes.map(([w, h]) => card(w, h)),
        194,
        281,
      ).fields,
    ).toHaveLength(1);
  });
});

describe("extentOf(part)", () => {
  it("holds outlines, scores and marks", () => {
    const part = card(30, 60, {
      scores: [
        [
          [0, 20],
          [9, 20],
        ],
      ],
      marks: [
        {
          line: [
            [20, 80],
            [50, 81],
          ],
          kind: "button",
        },
      ],
    });
    expect(extentOf(part)).toEqual({ left: 0, right: 50, top: 11, bottom: 81 });
  });
});
