import type { Look } from "../../core/beginning/brought.ts";
import type { NewKitForm } from "../../input/beginning/new-kit-form.ts";
import { type BringHost, isRefused, type Refused } from "./bring-host.ts";

/** What the server says of a look: it may have been overtaken, or may not know the picture any more. */
export type LookAnswer = { readonly look: Look } | { readonly late: true } | { readonly gone: true };

/** Who hears of looks. */
export interface LookHearers {
  readonly heard: (look: Look) => void;
  readonly refused: (why: string) => void;
  /** Brings the picture again; false where that cannot be done. */
  readonly gone: () => Promise<boolean>;
}

/** Asks how a kit looks: one look at a time, and after it what was asked for last. */
export class Looker {
  readonly #host: BringHost;
  readonly #hearers: LookHearers;
  #next: NewKitForm | undefined;
  #isLooking = false;
  /** The height that fitted last, mm. */
  #near: number | undefined;

  constructor(host: BringHost, hearers: LookHearers) {
    this.#host = host;
    this.#hearers = hearers;
  }

  /** Whether something is asked for that was not heard of yet. */
  get isBusy(): boolean {
    return this.#isLooking;
  }

  ask(form: NewKitForm | undefined): void {
    this.#next = form;
    if (!this.#isLooking) void this.#look();
  }

  async #look(): Promise<void> {
    this.#isLooking = true;
    while (this.#next) {
      const form = this.#next;
      this.#next = undefined;
      const answer = await this.#host.post<LookAnswer>("/api/new/look", { ...form, near: this.#near });
      // Something newer was asked for meanwhile: what comes now is late, but still shows how it goes on.
      if (!("gone" in answer)) this.#hear(answer);
      else if (await this.#hearers.gone()) continue;
    }
    this.#isLooking = false;
  }

  #hear(answer: Exclude<LookAnswer, { readonly gone: true }> | Refused): void {
    if (isRefused(answer)) {
      if (!this.#next) this.#isLooking = false;
      this.#hearers.refused(answer.refused);
      return;
    }
    if ("late" in answer) return;
    const shape = answer.look.kit?.fit.shape;
    if (shape && "height" in shape) this.#near = shape.height;
    if (!this.#next) this.#isLooking = false;
    this.#hearers.heard(answer.look);
  }
}
