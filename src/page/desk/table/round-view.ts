import * as say from "../../../words/messages.ts";
import { type Orbit, THREE_QUARTER } from "../../view3d/orbit.ts";
import type { Shown } from "./shown.ts";

/** A piece is built anew in the round when nothing changed for so long, ms. */
const REST = 350;

/** The piece in the round, fetched when it is first asked for. It is seen from the same side when the kit has changed. */
export class RoundView {
  readonly #stage: HTMLElement;
  readonly #front: HTMLElement;
  readonly #choice: HTMLElement;
  #shown: Shown | undefined;
  #isRound = false;
  #close: (() => void) | undefined;
  #orbit: Orbit = THREE_QUARTER;
  #waits: ReturnType<typeof setTimeout> | undefined;

  /** `choice` has the radio buttons that choose between the front and the round. */
  constructor(stage: HTMLElement, front: HTMLElement, choice: HTMLElement) {
    this.#stage = stage;
    this.#choice = choice;
    this.#front = front;
    choice.addEventListener("change", ({ target }) => {
      this.#isRound = (target as HTMLInputElement).value === "round";
      stage.hidden = !this.#isRound;
      front.hidden = this.#isRound;
      if (this.#isRound) void this.#open();
      else this.#leave();
    });
  }

  show(shown: Shown): void {
    this.#shown = shown;
    if (!this.#isRound) return;
    clearTimeout(this.#waits);
    this.#waits = setTimeout(() => void this.#open(), REST);
  }

  /** Lays the piece down again: it is seen from the front. */
  lay(): void {
    if (!this.#isRound) return;
    this.#choice.querySelector<HTMLInputElement>('[value="front"]')!.click();
  }

  /** Lets go of what the view holds. */
  #leave(): void {
    clearTimeout(this.#waits);
    this.#close?.();
    this.#close = undefined;
  }

  async #open(): Promise<void> {
    if (!this.#close) this.#stage.textContent = say.deskKitRoundLoading();
    const { showRound } = await import("./round-stage.ts");
    this.#leave();
    if (!this.#isRound || !this.#shown) return;
    try {
      this.#close = showRound(this.#stage, this.#shown, {
        begin: this.#orbit,
        moved: (orbit) => {
          this.#orbit = orbit;
        },
      });
    } catch {
      this.#stage.textContent = say.roundNotDrawn();
    }
  }

  /** The view is left for another one. */
  dispose(): void {
    this.#leave();
    this.#front.hidden = false;
  }
}
