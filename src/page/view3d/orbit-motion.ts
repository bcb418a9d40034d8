import { FRONT, type Orbit, settled } from "./orbit.ts";

/** A frame of a screen that shows 60 a second, and the longest step that a movement makes, ms. */
const FRAME = 16;
const LONGEST = 64;

/** The orbit on its way to a wanted one, a step for each frame that is drawn. */
export class OrbitMotion {
  #orbit = FRONT;
  #wanted = FRONT;
  /** When the frame before was drawn, ms; undefined at rest. */
  #last: number | undefined;

  /** Whether it is where it is wanted. */
  get rests(): boolean {
    return this.#orbit === this.#wanted;
  }

  /** Goes there at once, or settles there over the next frames. */
  look(wanted: Orbit, settle: boolean): void {
    this.#wanted = wanted;
    if (!settle) this.#orbit = wanted;
  }

  /** The orbit to draw now. */
  step(now: number): Orbit {
    if (!this.rests) {
      const passed = this.#last === undefined ? FRAME : Math.min(LONGEST, now - this.#last);
      this.#orbit = settled(this.#orbit, this.#wanted, passed);
    }
    this.#last = this.rests ? undefined : now;
    return this.#orbit;
  }
}
