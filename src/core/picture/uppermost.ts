/** Keeps the greatest of some numbers from 0 at hand while they come and go: a bit for each, and a bit for each 32 of them. */
export class Uppermost {
  readonly #bits: Int32Array;
  readonly #filled: Int32Array;
  #greatest = -1;

  constructor(count: number) {
    this.#bits = new Int32Array((count + 31) >> 5);
    this.#filled = new Int32Array((this.#bits.length + 31) >> 5);
  }

  /** −1 where there is none. */
  get greatest(): number {
    return this.#greatest;
  }

  add(one: number): void {
    this.#bits[one >> 5]! |= 1 << (one & 31);
    this.#filled[one >> 10]! |= 1 << ((one >> 5) & 31);
    if (one > this.#greatest) this.#greatest = one;
  }

  remove(one: number): void {
    this.#bits[one >> 5]! &= ~(1 << (one & 31));
    if (this.#bits[one >> 5] === 0) this.#filled[one >> 10]! &= ~(1 << ((one >> 5) & 31));
    if (one === this.#greatest) this.#greatest = this.#next(one >> 10);
  }

  #next(from: number): number {
    for (let i = from; i >= 0; i -= 1) {
      if (this.#filled[i] === 0) continue;
      const word = 32 * i + 31 - Math.clz32(this.#filled[i]!);
      return 32 * word + 31 - Math.clz32(this.#bits[word]!);
    }
    return -1;
  }
}
