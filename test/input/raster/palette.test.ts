import { describe, expect, it } from "vitest";
import { paletteOf } from "../../../src/input/raster/palette.ts";
import type { Pixels } from "../../../src/input/raster/pixels.ts";

/** A row of pixels of these colours, each so many times; a fourth figure is alpha. */
function pixelsOf(...runs: readonly (readonly [count: number, rgba: readonly number[]])[]): Pixels {
  const data = runs.flatMap(([count, [red, green, blue, alpha = 255]]) =>
    Array.from({ length: count }, () => [red!, green!, blue!, alpha]).flat(),
  );
  const size = { width: data.length / 4, height: 1 };
  return { ...size, data: Uint8Array.from(data), saved: size, frames: 1 };
}

describe("paletteOf(pixels, count)", () => {
  it("finds flat colours as they are, dark to light, however few pixels have them", () => {
    const pixels = pixelsOf([900, [255, 255, 255]], [80, [176, 48, 48]], [20, [16, 16, 64]]);
    expect(paletteOf(pixels, 3)).toEqual(["#101040", "#b03030", "#ffffff"]);
  });

  it("has no more colours than the picture", () => {
    expect(paletteOf(pixelsOf([10, [0, 0, 0]], [10, [255, 255, 255]]), 5)).toEqual(["#000000", "#ffffff"]);
    expect(paletteOf(pixelsOf([10, [9, 9, 9, 0]]), 2)).toEqual([]);
  });

  it("leaves out what is transparent", () => {
    expect(paletteOf(pixelsOf([500, [0, 255, 0, 0]], [10, [0, 0, 0]], [10, [255, 255, 255]]), 2)).toEqual([
      "#000000",
      "#ffffff",
    ]);
  });

  it("puts shades that lie near each other together", () => {
    const pixels = pixelsOf([100, [200, 40, 40]], [100, [210, 50, 48]], [100, [40, 60, 200]], [100, [48, 60, 190]]);
    const [blue, red] = paletteOf(pixels, 2);
    expect(Number.parseInt(red!.slice(1, 3), 16)).toBeGreaterThan(190);
    expect(Number.parseInt(blue!.slice(5, 7), 16)).toBeGreaterThan(180);
  });
});
