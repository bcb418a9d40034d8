import { describe, expect, it } from "vitest";
import { panelX, toPanel } from "../../../src/core/window/panel.ts";
import { sizeOfPart } from "../../../src/core/window/part.ts";
import { box, CURVE, plate } from "./made.ts";

describe("toPanel(area, curve, kind)", () => {
  const ring = [
    [50, 0],
    [51.2, 6],
    [51.2, 2],
    [50.4, 2],
  ] as const;

  // By hand: 1.2 mm across is cut in three, an upright side stays whole, 0.8 mm is cut in two, 0.4 mm stays whole.
  const across = [50, 50.4, 50.8, 51.2, 51.2, 50.8, 50.4];
  const down = [0, 2, 4, 6, 2, 2, 2];

  it.each([
    ["flat", 1],
    ["wrap", 3],
  ] as const)("sets points no further apart than half a millimetre and bends them, %s", (kind, factor) => {
    const [panel] = toPanel([ring], CURVE, kind);
    expect(panel).toEqual(across.map((x, i) => [expect.closeTo((x - 50) * factor, 9), expect.closeTo(down[i]!, 9)]));
    expect(panelX(57, CURVE, kind)).toBe(7 * factor);
  });
});

describe("sizeOfPart(part)", () => {
  it("takes holes off the area and counts their outlines as cutting", () => {
    const outlines = plate(box(-5, 2, 95, 82), box(10, 20, 40, 60));
    const part = { id: "x", kind: "holder", material: "card", count: 1, frame: "own", scores: [], marks: [] } as const;
    expect(sizeOfPart({ ...part, outlines })).toEqual({
      width: 100,
      height: 80,
      area: 8000 - 1200,
      perimeter: 360 + 140,
    });
  });
});
