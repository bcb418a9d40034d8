/** Keeps the greatest of some numbers from 0 at hand while they come and go: a bit for each. */
export class Uppermost {
  readonly #bits: Int32Array;
  /** −1 where there is none. */
  greatest = -1;

  constructor(count: number) {
    this.#bits = new Int32Array((count + 31) >> 5);
  }

  set(one: number, isThere: boolean): void {
    const [word, bit] = [one >> 5, 1 << (one & 31)];
    if (isThere) this.#bits[word]! |= bit;
    else this.#bits[word]! &= ~bit;
    if (isThere) this.greatest = Math.max(one, this.greatest);
    else if (one === this.greatest) this.greatest = this.#next(word);
  }

  #next(from: number): number {
    let word = from;
    while (word >= 0 && this.#bits[word] === 0) word -= 1;
    return word < 0 ? -1 : 32 * word + 31 - Math.clz32(this.#bits[word]!);
  }
}
