import { describe, expect, it } from "vitest";
import { readMeasures } from "../../../src/build/beginning/measures.ts";

describe("readMeasures(text, count)", () => {
  // An inch is 25.4 mm (international inch, 1959); the rest by hand.
  it.each([
    ["198 x 126 x 21", [198, 126, 21]],
    ["198×126×21 mm", [198, 126, 21]],
    ["19.8 X 12.6 X 2.1 cm", [198, 126, 21]],
    ["8 x 5 x 1/2 in", [203.2, 127, 12.7]],
    ['7 3/4" x 5 x 7/8 in', [196.85, 127, 22.225]],
    ["20 cm x 5 in x 21 mm", [200, 127, 21]],
  ])("reads %j", (text, mm) => {
    expect(readMeasures(text, 3)?.map((one) => Math.round(one * 1e6) / 1e6)).toEqual(mm);
  });

  it.each([
    "",
    "198",
    "198 x 126",
    "198 x 126 x 21 x 3",
    "198 x -1 x 21",
    "198 x 126 x nine",
    "198,5 x 126 x 21",
    "1 x 2 x 3 ell",
  ])("reads no three lengths from %j", (text) => {
    expect(readMeasures(text, 3)).toBeUndefined();
  });
});
