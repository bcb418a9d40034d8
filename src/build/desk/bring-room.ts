import type { Brought, Icon, Look, Made } from "../../core/beginning/brought.ts";
import type { NewKitForm } from "../../input/beginning/new-kit-form.ts";
import * as say from "../../words/messages.ts";
import { AskedThread, type ThreadPlace } from "./asked-thread.ts";

/** What its thread is asked. */
export type BringQuestion =
  | { readonly ask: "bring"; readonly name: string; readonly bytes: Uint8Array }
  | { readonly ask: "seen"; readonly upload: string }
  | { readonly ask: "look"; readonly form: NewKitForm }
  | { readonly ask: "make"; readonly form: NewKitForm }
  | { readonly ask: "icons"; readonly word: string };

/** Longer than that no picture takes that is of any use on paper, ms. */
const MOST_TIME = 45_000;

/** A picture that would take more is one that nobody can fold. */
const LIMITS = { maxOldGenerationSizeMb: 1500 };

/** Where pictures are brought to, looked at and made into kits: in a thread that is ended when one takes too long. */
export class BringRoom {
  readonly #thread: AskedThread<BringQuestion>;
  readonly #mostTime: number;
  /** The look that is under way, and the one that comes after it: whoever was to come before is late. */
  #looking: Promise<unknown> | undefined;
  #next: (() => void) | undefined;

  constructor(place: ThreadPlace, mostTime = MOST_TIME) {
    this.#thread = new AskedThread(new URL("./bring-worker.ts", import.meta.url), place, LIMITS);
    this.#mostTime = mostTime;
  }

  bring(name: string, bytes: Uint8Array): Promise<Brought> {
    return this.#ask({ ask: "bring", name, bytes });
  }

  seen(upload: string): Promise<Uint8Array | undefined> {
    return this.#ask({ ask: "seen", upload });
  }

  icons(word: string): Promise<Icon[]> {
    return this.#ask({ ask: "icons", word });
  }

  make(form: NewKitForm): Promise<Made | undefined> {
    return this.#ask({ ask: "make", form });
  }

  /** One after the other; of those that wait only the last, "late" to all before it. */
  async look(form: NewKitForm): Promise<Look | undefined | "late"> {
    this.#next?.();
    if (this.#looking && (await this.#turn()) === "late") return "late";
    const looking = this.#ask<Look | undefined>({ ask: "look", form });
    this.#looking = looking;
    try {
      return await looking;
    } finally {
      if (this.#looking === looking) this.#looking = undefined;
    }
  }

  /** Ends the thread. */
  close(): Promise<void> {
    return this.#thread.close();
  }

  /** Waits for the look under way, unless another one comes meanwhile. */
  #turn(): Promise<"late" | "now"> {
    return new Promise((resolve) => {
      this.#next = () => resolve("late");
      const now = (): void => {
        resolve("now");
      };
      this.#looking?.then(now, now);
    });
  }

  #ask<Answer>(question: BringQuestion): Promise<Answer> {
    const timer = setTimeout(() => this.#thread.end(say.newTooMuch()), this.#mostTime);
    return this.#thread.ask<Answer>(question).finally(() => clearTimeout(timer));
  }
}
