import { describe, expect, it } from "vitest";
import { packOnShelves } from "../../../src/core/packing/shelves.ts";

describe("packOnShelves(pieces, sizeOf, field, apart)", () => {
  const lay = (
    field: { readonly width: number; readonly height: number },
    ...sizes: readonly (readonly [number, number])[]
  ) =>
    packOnShelves(sizes, ([width, height]) => ({ width, height }), field, 4).map((one) =>
      one.map(({ x, y, width, height, turned }) => [x, y, width, height, turned]),
    );
  const FIELD = { width: 100, height: 100 };

  it("lays pieces down, the highest first, shelf below shelf", () => {
    // By hand: the first shelf is 40 high and takes 56, 4 and 30; the next begin at 44 and 68.
    expect(lay(FIELD, [20, 30], [56, 40], [10, 40], [70, 20])).toEqual([
      [
        [0, 0, 56, 40, false],
        [60, 0, 30, 20, true],
        [0, 44, 70, 20, false],
        [0, 68, 40, 10, true],
      ],
    ]);
  });

  it.each([
    [
      "just as wide as the field",
      [
        [48, 20],
        [48, 20],
      ],
      [
        [0, 0],
        [52, 0],
      ],
    ],
    [
      "wider by a little",
      [
        [48.1, 20],
        [48, 20],
      ],
      [
        [0, 0],
        [0, 24],
      ],
    ],
    [
      "just as high as the field",
      [
        [90, 48],
        [90, 48],
      ],
      [
        [0, 0],
        [0, 52],
      ],
    ],
  ] as const)("uses a field to its edge: %s", (_, sizes, places) => {
    expect(lay(FIELD, ...sizes)[0]!.map(([x, y]) => [x, y])).toEqual(places);
    expect(lay(FIELD, ...sizes)).toHaveLength(1);
  });

  it("begins a field where a shelf finds no room", () => {
    expect(lay(FIELD, [90, 48], [90, 48.1])).toEqual([[[0, 0, 90, 48.1, false]], [[0, 0, 90, 48, false]]]);
  });

  it.each([
    ["stands where it is longer than the field is wide", [120, 30], [30, 120, true]],
    ["stands as it is", [30, 120], [30, 120, false]],
    ["lies as it is", [100, 30], [100, 30, false]],
    ["lies down", [30, 100], [100, 30, true]],
    ["is not turned where it is square", [50, 50], [50, 50, false]],
    ["is not turned where it is square and too wide", [120, 120], [120, 120, false]],
  ] as const)("%s", (_, size, laid) => {
    expect(lay({ width: 100, height: 150 }, size)[0]![0]!.slice(2)).toEqual(laid);
  });

  it("lays nothing on no field", () => {
    expect(lay(FIELD)).toEqual([]);
  });
});
