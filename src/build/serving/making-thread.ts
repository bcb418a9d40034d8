import { Worker } from "node:worker_threads";
import type { ServedPlace } from "./site-maker.ts";

/** What the thread that makes a served site is asked: to follow changes of files, or to print what an address leads to. */
export type Asked =
  | { readonly ask: "follow"; readonly paths: readonly string[] }
  | { readonly ask: "print"; readonly path: string };

/** What it tells. */
export type Told =
  | { readonly told: "shown" }
  /** Nothing could be read: the exit code. */
  | { readonly told: "nothing"; readonly code: number }
  /** What became of printing: a text that says why it failed. */
  | { readonly told: "printed"; readonly path: string; readonly failure?: string };

/** What the thread works with. */
export interface Workplace extends ServedPlace {
  readonly content: string;
}

/** Who hears of the site that is made. */
export interface Audience {
  /** Something is new to see. */
  readonly shown: () => void;
  /** Nothing could be read at the first start. */
  readonly nothing: (code: number) => void;
}

/** A thread that makes the served site, so that requests are answered meanwhile. */
export class MakingThread {
  readonly #worker: Worker;
  readonly #waiting = new Map<string, (failure: string | undefined) => void>();

  constructor(workplace: Workplace, { shown, nothing }: Audience) {
    this.#worker = new Worker(new URL("./making-worker.ts", import.meta.url), { workerData: workplace });
    this.#worker.on("error", (error) => {
      throw error;
    });
    this.#worker.on("message", (told: Told) => {
      if (told.told === "shown") shown();
      else if (told.told === "nothing") nothing(told.code);
      else {
        this.#waiting.get(told.path)?.(told.failure);
        this.#waiting.delete(told.path);
      }
    });
  }

  /** Makes what changed; the first time all. */
  follow(paths: readonly string[]): void {
    this.#ask({ ask: "follow", paths });
  }

  #ask(asked: Asked): void {
    this.#worker.postMessage(asked);
  }
}
