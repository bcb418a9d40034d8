import Color from "colorjs.io/dist/color.js";

/** A colour in OKLab (CSS Color 4, "Oklab"): lightness 0…1, and two axes of hue. */
export type Lab = readonly [lightness: number, a: number, b: number];

/** A colour as CSS writes it; undefined where it is none. */
export function labOf(css: string): Lab | undefined {
  try {
    const [l, a, b] = new Color(css).to("oklab").coords;
    return [l ?? 0, a ?? 0, b ?? 0];
  } catch {
    return undefined;
  }
}

/** How far two colours are from each other to the eye; about 0.02 is just seen (CSS Color 4, "deltaEOK"). */
export function distance([l, a, b]: Lab, [l2, a2, b2]: Lab): number {
  return Math.sqrt((l - l2) ** 2 + (a - a2) ** 2 + (b - b2) ** 2);
}

/** The light of each value 0…255 of sRGB. */
const LIGHT = Float64Array.from({ length: 256 }, (_, value) => {
  const share = value / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
});

/** A pixel of sRGB in OKLab, by the sample code of CSS Color 4: the library takes too long for millions of pixels. */
export function pixelLab(red: number, green: number, blue: number): Lab {
  const [r, g, b] = [LIGHT[red]!, LIGHT[green]!, LIGHT[blue]!];
  const l = Math.cbrt(0.41222147 * r + 0.5363325363 * g + 0.0514459929 * b);
  const m = Math.cbrt(0.2119034982 * r + 0.6806995451 * g + 0.1073969566 * b);
  const s = Math.cbrt(0.0883024619 * r + 0.2817188376 * g + 0.6299787005 * b);
  return [
    0.2104542553 * l + 0.793617785 * m - 0.0040720468 * s,
    1.9779984951 * l - 2.428592205 * m + 0.4505937099 * s,
    0.0259040371 * l + 0.7827717662 * m - 0.808675766 * s,
  ];
}
