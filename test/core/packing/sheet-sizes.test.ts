import { describe, expect, it } from "vitest";
import { SHEET_NAMES, SHEET_SIZES } from "../../../src/core/packing/sheet-sizes.ts";

// ISO 216 (A4), and 8.5 × 11 in and 12 × 12 in of 25.4 mm each.
describe("SHEET_SIZES", () => {
  it("are A4, US Letter and the sheets of craft shops, upright", () => {
    expect(SHEET_NAMES).toEqual(["a4", "letter", "12x12"]);
    const sizes = Object.values(SHEET_SIZES).map(({ width, height }) => [width, height]);
    expect(sizes).toEqual(
      [
        [210, 297],
        [215.9, 279.4],
        [304.8, 304.8],
      ].map((size) => size.map((mm) => expect.closeTo(mm, 9))),
    );
  });
});
