import { after } from "../shared/after.ts";

/** Work that is done one after the other; what belongs to an older turn than the newest is left out. */
export class Turns {
  #newest = 0;
  #before: Promise<unknown> = Promise.resolve();

  /** Does work after a rest, ms, in which a newer turn may come; undefined where one came. */
  take<T>(turn: number, work: () => T | Promise<T>, rest = 0): Promise<T | undefined> {
    this.#newest = Math.max(this.#newest, turn);
    const done = this.#before.then(() => after(rest)).then(() => (turn < this.#newest ? undefined : work()));
    this.#before = done.catch(() => undefined);
    return done;
  }
}
