import type { ColourDistances, Fringe } from "./colour-distances.ts";
import { OPAQUE } from "./lightness.ts";
import type { Pixels } from "./pixels.ts";

/** A pixel nearer than this to its colour is meant to have it. */
const MEANT = 0.03;
/** Transparent pixels have no class. */
const CLEAR = 255;

/**
 * Pixels at the border of two areas have colours between theirs, and may be nearest to a third: grey between black and white.
 * These are told by lying in no square of 3 × 3 pixels of their class and near squares of others: only those come into question.
 */
export function clearFringe(pixels: Pixels, distances: ColourDistances): Fringe {
  const { width, height, data } = pixels;
  const classes = new Uint8Array(width * height);
  for (let i = 0; i < classes.length; i += 1)
    classes[i] = data[4 * i + 3]! < OPAQUE ? CLEAR : distances.nearest(data, 4 * i);
  const isCore = coresOf(classes, width, height);
  const fringe = new Uint16Array(width * height);
  for (let y = 0, i = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1, i += 1) {
      const own = classes[i]!;
      if (isCore[i] === 1 || own === CLEAR || distances.least(data, 4 * i) < MEANT) continue;
      let near = 0;
      let isOwn = false;
      for (let v = Math.max(0, y - 2); v <= Math.min(height - 1, y + 2); v += 1) {
        for (let u = Math.max(0, x - 2); u <= Math.min(width - 1, x + 2); u += 1) {
          const j = v * width + u;
          if (isCore[j] !== 1) continue;
          if (classes[j] === own) isOwn ||= Math.max(Math.abs(u - x), Math.abs(v - y)) <= 1;
          else near |= 1 << classes[j]!;
        }
      }
      if (!isOwn) fringe[i] = near;
    }
  }
  return fringe;
}

/** Pixels in the middle of 3 × 3 of their class, those at an edge of the picture as far as it goes. */
function coresOf(classes: Uint8Array, width: number, height: number): Uint8Array {
  const isCore = new Uint8Array(classes.length);
  for (let y = 0, i = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1, i += 1) {
      const own = classes[i]!;
      if (own === CLEAR) continue;
      let same = true;
      for (let v = Math.max(0, y - 1); same && v <= Math.min(height - 1, y + 1); v += 1) {
        for (let u = Math.max(0, x - 1); same && u <= Math.min(width - 1, x + 1); u += 1)
          same = classes[v * width + u] === own;
      }
      if (same) isCore[i] = 1;
    }
  }
  return isCore;
}
