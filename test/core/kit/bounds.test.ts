import { describe, expect, it } from "vitest";
import { BOUNDS } from "../../../src/core/kit/bounds.ts";

describe("BOUNDS", () => {
  // As the reference and the schemas of 0.1.0 publish them: what was valid once stays valid.
  it.each([
    ["leafHeight", "length", 40, 600],
    ["leafWidth", "length", 30, 500],
    ["blockThickness", "length", 1, 200],
    ["leaves", "count", 4, 3000],
    ["leaf", "count", 1, 3000],
    ["page", "count", 1, 10000],
    ["levels", "count", 2, 9],
    ["plateLeaves", "count", 1, 500],
    ["square", "length", 0, 20],
    ["boardThickness", "length", 0, 10],
    ["depth", "length", 1, 200],
    ["gaugeLine", "count", 1, 40],
    ["packingPiece", "length", 0.1, 50],
    ["borderLeaves", "count", 0, 1000],
    ["pictureLeaves", "count", 2, 3000],
    ["head", "length", 0, 600],
    ["pictureHeight", "length", 5, 600],
    ["opening", "degrees", 5, 360],
    ["markStep", "length", 0.1, 5],
    ["leastTab", "length", 0, 30],
    ["gutterClearance", "length", 0, 100],
    ["flapBulk", "number", 0, 20],
    ["batch", "count", 5, 60],
    ["lightDiameter", "length", 5, 150],
    ["lightHeight", "length", 5, 300],
    ["lightClearance", "length", 0, 20],
    ["lightSetback", "length", 0, 100],
    ["lightFloor", "length", 0, 600],
    ["lip", "length", 2, 30],
    ["sheetSide", "length", 50, 2000],
    ["seat", "count", 1, 200],
  ] as const)("%s is a %s from %d to %d", (name, kind, least, most) => {
    expect(BOUNDS[name]).toEqual({ kind, least, most });
  });

  // Of 0.2.0.
  it.each([
    ["motifPlace", "length", -200, 1000],
    ["motifSide", "length", 4, 600],
    ["spacers", "count", 0, 6],
    ["pack", "count", 1, 10_000],
  ] as const)("%s is a %s from %d to %d", (name, kind, least, most) => {
    expect(BOUNDS[name]).toEqual({ kind, least, most });
  });

  it("are all in the tables above", () => {
    expect(Object.keys(BOUNDS)).toHaveLength(35);
  });

  /*
   * Trade formats, height × width: A 178 × 111, B 198 × 129, Demy 216 × 138, Royal 234 × 156 mm (printers' tables of trade sizes);
   * printers' calipers of book paper, 0.0032 to 0.0061 in; LED tealights and votives, 36 to 50 mm wide and 30 to 60 high.
   */
  it.each([
    ["leafHeight", [178, 198, 216, 234]],
    ["leafWidth", [111, 129, 138, 156]],
    ["blockThickness", [50 * 0.0032 * 25.4, 400 * 0.0061 * 25.4]],
    ["lightDiameter", [36, 38, 50]],
    ["lightHeight", [30, 60]],
    ["sheetSide", [148, 210, 297, 420, 304.8]],
  ] as const)("hold the trade's own measures: %s", (name, measures) => {
    const { least, most } = BOUNDS[name];
    for (const measure of measures) expect(measure >= least && measure <= most).toBe(true);
  });
});
