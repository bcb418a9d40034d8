import { Worker } from "node:worker_threads";
import type { Brought, Icon, Look, Made } from "../../core/beginning/brought.ts";
import type { NewKitForm } from "../../input/beginning/new-kit-form.ts";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { foreseen } from "../errors/foreseen.ts";
import { programFault } from "../errors/program-fault.ts";

/** Where the thread works. */
export interface BringPlace {
  readonly base: string;
  readonly content: string;
}

type Question =
  | { readonly ask: "bring"; readonly name: string; readonly bytes: Uint8Array }
  | { readonly ask: "seen"; readonly upload: string }
  | { readonly ask: "look"; readonly form: NewKitForm }
  | { readonly ask: "make"; readonly form: NewKitForm }
  | { readonly ask: "icons"; readonly word: string };

export type BringAsk = Question & { readonly id: number };

/** What the thread answers; a fault is one of the program, in words. */
export type BringAnswer =
  | { readonly id: number; readonly answer: unknown }
  | { readonly id: number; readonly fault: string };

interface Waiting {
  readonly answered: (answer: unknown) => void;
  readonly failed: (error: Error) => void;
}

/** Longer than that no picture takes that is of any use on paper, ms. */
const MOST_TIME = 45_000;

/** Where pictures are brought to, looked at and made into kits: in a thread that is ended when one takes too long. */
export class BringRoom {
  readonly #place: BringPlace;
  readonly #mostTime: number;
  #thread: Worker | undefined;
  readonly #waiting = new Map<number, Waiting>();
  #asked = 0;
  /** The look that is under way, and the one that comes after it: whoever was to come before is late. */
  #looking: Promise<unknown> | undefined;
  #next: (() => void) | undefined;

  constructor(place: BringPlace, mostTime = MOST_TIME) {
    this.#place = place;
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
  async close(): Promise<void> {
    await this.#thread?.terminate();
    this.#thread = undefined;
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

  #ask<Answer>(question: Question): Promise<Answer> {
    this.#asked += 1;
    const id = this.#asked;
    const timer = setTimeout(() => this.#giveUp(id), this.#mostTime);
    return new Promise<Answer>((resolve, reject) => {
      this.#waiting.set(id, { answered: resolve as Waiting["answered"], failed: reject });
      this.#worker().postMessage({ ...question, id } satisfies BringAsk);
    }).finally(() => clearTimeout(timer));
  }

  #worker(): Worker {
    if (this.#thread) return this.#thread;
    const thread = new Worker(new URL("./bring-worker.ts", import.meta.url), {
      workerData: this.#place,
      // A picture that would take more is one that nobody can fold.
      resourceLimits: { maxOldGenerationSizeMb: 1500 },
    });
    thread.unref();
    thread.on("message", (told: BringAnswer) => this.#hear(told));
    thread.on("error", (error) => this.#end(thread, this.#why(error)));
    this.#thread = thread;
    return thread;
  }

  #hear(told: BringAnswer): void {
    const waiting = this.#waiting.get(told.id);
    this.#waiting.delete(told.id);
    if ("fault" in told) waiting?.failed(new BuildError(told.fault));
    else waiting?.answered(told.answer);
  }

  #giveUp(id: number): void {
    if (this.#waiting.has(id) && this.#thread) this.#end(this.#thread, say.newTooMuch());
  }

  /** A picture may be too much for a thread; anything else is a fault of the program, or of the site’s words. */
  #why(error: unknown): string {
    if ((error as NodeJS.ErrnoException).code === "ERR_WORKER_OUT_OF_MEMORY") return say.newTooMuch();
    return foreseen(error) ?? programFault(error, this.#place.base);
  }

  /** All that was asked of a thread that is ended is answered with the reason. */
  #end(thread: Worker, why: string): void {
    if (this.#thread !== thread) return;
    this.#thread = undefined;
    void thread.terminate();
    for (const { failed } of this.#waiting.values()) failed(new BuildError(why));
    this.#waiting.clear();
  }
}
