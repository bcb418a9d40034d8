import Color from "colorjs.io/dist/color.js";
import { OPAQUE } from "./lightness.ts";
import { distance, type Lab, pixelLab } from "./oklab.ts";
import type { Pixels } from "./pixels.ts";

/** Colours are gathered in cells of so many values a channel. */
const CELL = 16;
/** So many pixels tell a picture's colours. */
const SAMPLE = 250_000;
/** Rounds in which colours settle; most pictures need fewer. */
const ROUNDS = 16;

/** Colours that lie in one cell: how many pixels, and their mean in OKLab. */
interface Cell {
  readonly count: number;
  readonly lab: Lab;
}

/**
 * The colours that stand best for all of a picture, dark to light, as `#rrggbb`: k-means in OKLab (S. P. Lloyd, "Least squares
 * quantization in PCM", IEEE Transactions on Information Theory 28, 1982), begun with the colour of the most pixels and then
 * each time with what is worst told. Fewer where a picture has no more; transparent pixels count nothing.
 */
export function paletteOf(pixels: Pixels, count: number): string[] {
  const cells = cellsOf(pixels);
  let middles = beginnings(cells, count);
  for (let round = 0; round < ROUNDS; round += 1) {
    const settled = settle(cells, middles);
    const moved = settled.some((middle, i) => distance(middle, middles[i]!) > 1e-4);
    middles = settled;
    if (!moved) break;
  }
  return [...new Set(middles.toSorted((a, b) => a[0] - b[0]).map(hexOf))];
}

const known = new WeakMap<Pixels, readonly Cell[]>();

function cellsOf(pixels: Pixels): readonly Cell[] {
  const cells = known.get(pixels) ?? gathered(pixels);
  known.set(pixels, cells);
  return cells;
}

function gathered({ data, width, height }: Pixels): Cell[] {
  const sums = new Map<number, { count: number; red: number; green: number; blue: number }>();
  const step = Math.max(1, Math.floor((width * height) / SAMPLE)) * 4;
  for (let at = 0; at < data.length; at += step) {
    if (data[at + 3]! < OPAQUE) continue;
    const [red, green, blue] = [data[at]!, data[at + 1]!, data[at + 2]!];
    const key = (Math.floor(red / CELL) * CELL + Math.floor(green / CELL)) * CELL + Math.floor(blue / CELL);
    const sum = sums.get(key) ?? { count: 0, red: 0, green: 0, blue: 0 };
    sum.count += 1;
    sum.red += red;
    sum.green += green;
    sum.blue += blue;
    sums.set(key, sum);
  }
  const mean = (sum: number, count: number): number => Math.round(sum / count);
  return [...sums.values()].map(({ count, red, green, blue }) => ({
    count,
    lab: pixelLab(mean(red, count), mean(green, count), mean(blue, count)),
  }));
}

function beginnings(cells: readonly Cell[], count: number): Lab[] {
  const middles: Lab[] = [];
  while (middles.length < count) {
    const weigh = ({ count: pixels, lab }: Cell): number =>
      pixels * Math.min(1, ...middles.map((middle) => distance(middle, lab) ** 2));
    const next = heaviest(cells, weigh);
    if (!next) break;
    middles.push(next.lab);
  }
  return middles;
}

function heaviest(cells: readonly Cell[], weigh: (cell: Cell) => number): Cell | undefined {
  let [found, most]: [Cell | undefined, number] = [undefined, 1e-9];
  for (const cell of cells) {
    const weight = weigh(cell);
    if (weight > most) [found, most] = [cell, weight];
  }
  return found;
}

/** Each middle where the cells that are nearest to it have theirs. */
function settle(cells: readonly Cell[], middles: readonly Lab[]): Lab[] {
  const sums = middles.map(() => [0, 0, 0, 0]);
  for (const { count, lab } of cells) {
    const sum = sums[nearest(middles, lab)]!;
    sum[0]! += count;
    for (const axis of [0, 1, 2] as const) sum[axis + 1]! += count * lab[axis];
  }
  return sums.map(([count, l, a, b], i): Lab => (count === 0 ? middles[i]! : [l! / count!, a! / count!, b! / count!]));
}

function nearest(middles: readonly Lab[], lab: Lab): number {
  let [found, least] = [0, Number.POSITIVE_INFINITY];
  for (const [i, middle] of middles.entries()) {
    const far = distance(middle, lab);
    if (far < least) [found, least] = [i, far];
  }
  return found;
}

function hexOf([l, a, b]: Lab): string {
  return new Color("oklab", [l, a, b]).to("srgb").toGamut().toString({ format: "hex", collapse: false });
}
