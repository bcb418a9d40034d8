/** A grid of values 0…255, row by row. */
interface Grid {
  readonly width: number;
  readonly height: number;
}

/**
 * The middle value of the square of 2 · reach + 1 pixels round each pixel; at an edge the pixels of the edge stand for those
 * beyond. It takes grain away and leaves edges sharp and where they are.
 */
export function median(values: Uint8Array, grid: Grid, reach: number): Uint8Array {
  const middle = new Uint8Array(values.length);
  for (let y = 0; y < grid.height; y += 1) middle.set(medianRow(values, grid, { reach, y }), y * grid.width);
  return middle;
}

/**
 * The same of one row. By a histogram that moves along it: T. S. Huang, G. J. Yang and G. Y. Tang, "A fast two-dimensional median
 * filtering algorithm", IEEE Transactions on Acoustics, Speech, and Signal Processing 27 (1979).
 */
export function medianRow(
  values: Uint8Array,
  { width, height }: Grid,
  { reach, y }: { readonly reach: number; readonly y: number },
): Uint8Array {
  const middle = new Uint8Array(width);
  const rows = Array.from({ length: 2 * reach + 1 }, (_, i) => within(y - reach + i, height) * width);
  const window = new MovingMiddle(((2 * reach + 1) ** 2 + 1) / 2);
  for (let u = -reach; u <= reach; u += 1) for (const row of rows) window.add(values[row + within(u, width)]!);
  for (let x = 0; x < width; x += 1) {
    middle[x] = window.middle();
    const [old, next] = [within(x - reach, width), within(x + reach + 1, width)];
    for (const row of rows) {
      window.remove(values[row + old]!);
      window.add(values[row + next]!);
    }
  }
  return middle;
}

/** Counts of values, and the one that stands at a place in their order: it seldom moves far. */
class MovingMiddle {
  readonly #counts = new Uint16Array(256);
  readonly #place: number;
  #value = 0;
  /** How many are less than the value. */
  #below = 0;

  constructor(place: number) {
    this.#place = place;
  }

  add(value: number): void {
    this.#counts[value]! += 1;
    if (value < this.#value) this.#below += 1;
  }

  remove(value: number): void {
    this.#counts[value]! -= 1;
    if (value < this.#value) this.#below -= 1;
  }

  middle(): number {
    while (this.#below >= this.#place) {
      this.#value -= 1;
      this.#below -= this.#counts[this.#value]!;
    }
    while (this.#below + this.#counts[this.#value]! < this.#place) {
      this.#below += this.#counts[this.#value]!;
      this.#value += 1;
    }
    return this.#value;
  }
}

function within(at: number, side: number): number {
  return Math.min(side - 1, Math.max(0, at));
}
