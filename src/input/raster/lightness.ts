import { meanOf, otsuLimits } from "./otsu.ts";
import type { Pixels } from "./pixels.ts";

/** Weights of red, green and blue as they are stored: Rec. ITU-R BT.709, part 1, item 3.2. */
const [RED, GREEN, BLUE] = [0.2126, 0.7152, 0.0722];

/** A pixel of less alpha counts as transparent. */
export const OPAQUE = 128;

const known = new WeakMap<Pixels, Uint8Array>();

/** The lightness 0…255 of each pixel, rounded; worked out once for a picture, however often it is traced. */
export function lightnessOf(pixels: Pixels): Uint8Array {
  const light = known.get(pixels) ?? lightnessIn(pixels);
  known.set(pixels, light);
  return light;
}

function lightnessIn({ data, width, height }: Pixels): Uint8Array {
  const light = new Uint8Array(width * height);
  for (let i = 0, at = 0; i < light.length; i += 1, at += 4)
    light[i] = Math.round(RED * data[at]! + GREEN * data[at + 1]! + BLUE * data[at + 2]!);
  return light;
}

/** How often each lightness occurs among the pixels that are not transparent. */
export function histogramOf(light: Uint8Array, { data }: Pixels): Uint32Array {
  const histogram = new Uint32Array(256);
  light.forEach((value, i) => {
    if (data[4 * i + 3]! >= OPAQUE) histogram[value]! += 1;
  });
  return histogram;
}

/**
 * Where Otsu's classes part, ascending: half-way between the means of neighbours, which is where the values of each are nearest
 * to their own. So an outline does not lean to one side where values between the classes are rare, as at sharp edges.
 */
export function middleLimits(histogram: Uint32Array, classes: number): number[] | undefined {
  const limits = otsuLimits(histogram, classes);
  const means =
    limits && [...limits, 255].map((last, i) => meanOf(histogram, i === 0 ? 0 : limits[i - 1]! + 1, last).mean);
  return means?.slice(1).map((mean, i) => (means[i]! + mean) / 2);
}
