import { describe, expect, it } from "vitest";
import { median } from "../../../src/input/raster/median.ts";
import { fc } from "../../seed.ts";

/** By sorting each square. */
function sorted(values: Uint8Array, width: number, height: number, reach: number): number[] {
  const inside = (at: number, side: number): number => Math.min(side - 1, Math.max(0, at));
  return Array.from(values, (_, i) => {
    const square: number[] = [];
    for (let v = -reach; v <= reach; v += 1)
      for (let u = -reach; u <= reach; u += 1)
        square.push(values[inside(Math.floor(i / width) + v, height) * width + inside((i % width) + u, width)]!);
    return square.sort((a, b) => a - b)[(square.length - 1) / 2]!;
  });
}

describe("median(values, grid, reach)", () => {
  it("is the middle one of the values round each pixel", () => {
    const grids = fc.tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 })).chain(([width, height]) =>
      fc.record({
        width: fc.constant(width),
        height: fc.constant(height),
        values: fc.uint8Array({ minLength: width * height, maxLength: width * height }),
      }),
    );
    fc.assert(
      fc.property(grids, fc.integer({ min: 1, max: 3 }), ({ width, height, values }, reach) => {
        expect([...median(values, { width, height }, reach)]).toEqual(sorted(values, width, height, reach));
      }),
    );
  });
});
