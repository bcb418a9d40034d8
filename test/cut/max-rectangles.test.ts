import fc from "fast-check";
import { MaxRectsPacker } from "maxrects-packer/dist/maxrects-packer.mjs";
import { describe, expect, it } from "vitest";
import { MaxRectangles } from "../../src/cut/max-rectangles.ts";

const SIZES = fc.array(fc.tuple(fc.integer({ min: 1, max: 90 }), fc.integer({ min: 1, max: 90 })), { maxLength: 25 });

describe("MaxRectangles", () => {
  /** Oracle: the npm package maxrects-packer. */
  it("puts pieces where another packer of the same kind puts them", () => {
    fc.assert(
      fc.property(SIZES, fc.integer({ min: 0, max: 6 }), (sizes, apart) => {
        const free = new MaxRectangles(120, 100, apart);
        const packer = new MaxRectsPacker<number>(120, 100, apart, {
          smart: false,
          pot: false,
          square: false,
          allowRotation: true,
        });
        const mine = sizes.map(([width, height], data) => ({ data, spot: free.place(width, height) }));
        for (const [data, [width, height]] of sizes.entries()) packer.add(width, height, data);
        const first = packer.bins.find((bin) =>
          bin.rects.some((rect) => rect.data === mine.find((one) => one.spot)?.data),
        );
        const theirs = first?.rects.map(({ data, x, y, width, height, rot }) => ({
          data,
          spot: { x, y, width, height, turned: rot },
        }));
        expect(mine.filter(({ spot }) => spot)).toEqual(theirs ?? []);
      }),
      { numRuns: 400 },
    );
  });

  it("keeps pieces apart and on the sheet, and refuses what has no room", () => {
    const free = new MaxRectangles(100, 50, 4);
    expect(free.place(100, 23)).toEqual({ x: 0, y: 0, width: 100, height: 23, turned: false });
    expect(free.place(23, 48)).toEqual({ x: 0, y: 27, width: 48, height: 23, turned: true });
    expect(free.place(49, 23)).toBeUndefined();
    expect(free.place(48, 23)).toEqual({ x: 52, y: 27, width: 48, height: 23, turned: false });
  });
});
