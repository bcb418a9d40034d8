import Color from "colorjs.io";
import { describe, expect, it } from "vitest";
import { labOf, pixelLab } from "../../../src/input/raster/oklab.ts";
import { fc } from "../../seed.ts";

describe("pixelLab(red, green, blue)", () => {
  it("is what the library of colours makes of the pixel", () => {
    const channel = fc.integer({ min: 0, max: 255 });
    fc.assert(
      fc.property(channel, channel, channel, (red, green, blue) => {
        const [l, a, b] = new Color("srgb", [red / 255, green / 255, blue / 255]).to("oklab").coords;
        const ours = pixelLab(red, green, blue);
        for (const [i, theirs] of [l, a, b].entries()) expect(ours[i]).toBeCloseTo(theirs ?? 0, 5);
      }),
    );
  });
});

describe("labOf(css)", () => {
  it("reads colours as style sheets write them", () => {
    expect(labOf("#fff")![0]).toBeCloseTo(1, 4);
    expect(labOf("black")).toEqual([0, 0, 0]);
    expect(labOf("rgb(204 51 51)")).toEqual(labOf("#c33"));
    expect(labOf("sea")).toBeUndefined();
  });
});
