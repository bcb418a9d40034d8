import { distance, type Lab, pixelLab } from "./oklab.ts";
import type { Pixels } from "./pixels.ts";

/** Steps of a channel that are told apart: a pixel is taken for a colour that is at most 1 of 255 off. */
const STEPS = 128;

/** Of each pixel, the palettes that alone come into question, a bit for each; 0 where all do. */
export type Fringe = Uint16Array;

/** How far pixels are from palettes, front to back; each colour is worked out once. */
export class ColourDistances {
  readonly #palettes: readonly (readonly Lab[])[];
  readonly #scratch: Float64Array;
  readonly #nearest = new Int8Array(STEPS ** 3).fill(-1);
  readonly #least = new Float32Array(STEPS ** 3);

  constructor(palettes: readonly (readonly Lab[])[]) {
    this.#palettes = palettes;
    this.#scratch = new Float64Array(palettes.length);
  }

  /** The palette nearest to the pixel that stands at `at` in the data. */
  nearest(data: Uint8Array, at: number): number {
    const key = keyOf(data, at);
    if (this.#nearest[key]! < 0) this.#workOut(key);
    return this.#nearest[key]!;
  }

  /** The distance from it. */
  least(data: Uint8Array, at: number): number {
    this.nearest(data, at);
    return this.#least[keyOf(data, at)]!;
  }

  /** Of each pixel, how much nearer it is to the palettes 0…k than to those behind them, times `scale`. */
  between({ data, width, height }: Pixels, k: number, scale: number, fringe: Fringe): Float32Array {
    const known = new Float32Array(STEPS ** 3).fill(Number.NaN);
    const values = new Float32Array(width * height);
    for (let i = 0; i < values.length; i += 1) {
      const key = keyOf(data, 4 * i);
      const among = fringe[i]!;
      if (among === 0 && Number.isNaN(known[key]!)) known[key] = scale * this.#difference(key, k);
      values[i] = among === 0 ? known[key]! : scale * this.#difference(key, k, among);
    }
    return values;
  }

  #difference(key: number, k: number, among = 0): number {
    const away = this.#away(key);
    let [front, back] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (let i = 0; i < away.length; i += 1) {
      if (among !== 0 && (among & (1 << i)) === 0) continue;
      if (i <= k) front = Math.min(front, away[i]!);
      else back = Math.min(back, away[i]!);
    }
    // Where one side alone comes into question, the pixel lies well inside it.
    return Math.max(-1, Math.min(1, back - front));
  }

  #workOut(key: number): void {
    const away = this.#away(key);
    let nearest = 0;
    for (let i = 1; i < away.length; i += 1) if (away[i]! < away[nearest]!) nearest = i;
    this.#nearest[key] = nearest;
    this.#least[key] = away[nearest]!;
  }

  /** The distance from each palette; good until it is asked for again. */
  #away(key: number): Float64Array {
    const lab = pixelLab(channel(key >> 14), channel((key >> 7) & 127), channel(key & 127));
    this.#palettes.forEach((palette, i) => {
      let least = Number.POSITIVE_INFINITY;
      for (const one of palette) least = Math.min(least, distance(one, lab));
      this.#scratch[i] = least;
    });
    return this.#scratch;
  }
}

function keyOf(data: Uint8Array, at: number): number {
  const step = (value: number): number => ((value * (STEPS - 1) + 127) / 255) | 0;
  return (step(data[at]!) << 14) | (step(data[at + 1]!) << 7) | step(data[at + 2]!);
}

function channel(step: number): number {
  return Math.round((step * 255) / (STEPS - 1));
}
