/** Before so many are done, nothing is foretold. */
const LEAST = 6;
/** So many of the last tell how fast it goes: pages differ, and machines become busy. */
const LAST = 40;

/** Foretells how long a row of things still takes, from when the last of them were done. */
export class TimeLeft {
  readonly #count: number;
  readonly #now: () => number;
  /** When the last were done, ms; at first, when it began. */
  readonly #times: number[];
  #done = 0;

  constructor(count: number, now: () => number = () => performance.now()) {
    this.#count = count;
    this.#now = now;
    this.#times = [now()];
  }

  /** Called when one more is done: ms that the others take; undefined where it is too early to tell. */
  step(): number | undefined {
    this.#done += 1;
    this.#times.push(this.#now());
    if (this.#times.length > LAST + 1) this.#times.shift();
    if (this.#done < LEAST) return undefined;
    const each = (this.#times.at(-1)! - this.#times[0]!) / (this.#times.length - 1);
    return each * (this.#count - this.#done);
  }
}
