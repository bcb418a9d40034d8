import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { notchMarks } from "../../../src/core/light/notch-marks.ts";

const notch = { leaf: leafNumber(70), from: 104.3, to: 150.1, depth: 52.6, remaining: 87.4 };

describe("notchMarks(notch, step)", () => {
  it("rounds outward: the upper end up, the lower end and the depth to more", () => {
    expect(notchMarks(notch, 0.5)).toEqual({ from: 104, to: 150.5, depth: 53 });
    expect(notchMarks(notch, 1)).toEqual({ from: 104, to: 151, depth: 53 });
  });

  it("leaves what is on a step where it is, dust or not", () => {
    const step = 25.4 / 32;
    const even = { ...notch, from: 130 * step + 1e-9, to: 190 * step - 1e-9, depth: 66 * step + 1e-9 };
    const marks = notchMarks(even, step);
    expect([marks.from / step, marks.to / step, marks.depth / step].map((n) => Math.round(n * 1e6) / 1e6)).toEqual([
      130, 190, 66,
    ]);
  });
});
