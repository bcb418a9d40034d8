import { Worker } from "node:worker_threads";
import { BuildError } from "../errors/build-error.ts";
import type { SiteFacts } from "../library/site-facts.ts";

/** Where the drawing thread works. */
export interface DrawingWorkplace {
  readonly base: string;
  readonly content: string;
}

/** What it is asked: to draw something by its name, or to forget what all kits share. */
export type DrawingAsked =
  | { readonly ask: "forget" }
  | { readonly ask: "draw"; readonly id: number; readonly by: DrawerName; readonly what: object };

/** What it tells. */
export type DrawingTold = { readonly id: number } & ({ readonly answer: unknown } | { readonly failure: string });

/** Names of what draws. */
export type DrawerName = "picture";

/** Draws what is asked, as its route checked it, with what all kits of the site share; `kits` is the folder of their folders. */
export type Drawer = (what: object, facts: SiteFacts, kits: string) => unknown;

interface Waiting {
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: Error) => void;
}

/** A thread that draws for the desk. It starts when it is first asked, and again after a picture that was too much for it. */
export class DrawingThread {
  readonly #place: DrawingWorkplace;
  readonly #waiting = new Map<number, Waiting>();
  #worker: Worker | undefined;
  #asked = 0;

  constructor(place: DrawingWorkplace) {
    this.#place = place;
  }

  /** Starts it before it is asked: it takes a moment. */
  warm(): void {
    this.#open();
  }

  /** Something that all kits share has changed. */
  forget(): void {
    this.#worker?.postMessage({ ask: "forget" } satisfies DrawingAsked);
  }

  /** Draws something by its name (see drawing-worker.ts). @throws BuildError where the program fails at it */
  draw<T>(by: DrawerName, what: object): Promise<T> {
    this.#asked += 1;
    const id = this.#asked;
    const { promise, resolve, reject } = Promise.withResolvers<unknown>();
    this.#waiting.set(id, { resolve, reject });
    this.#open().postMessage({ ask: "draw", id, by, what } satisfies DrawingAsked);
    return promise as Promise<T>;
  }

  #open(): Worker {
    if (this.#worker) return this.#worker;
    const worker = new Worker(new URL("./drawing-worker.ts", import.meta.url), { workerData: this.#place });
    worker.unref();
    worker.on("message", (told: DrawingTold) => {
      const waiting = this.#waiting.get(told.id);
      this.#waiting.delete(told.id);
      if ("answer" in told) waiting?.resolve(told.answer);
      else waiting?.reject(new BuildError(told.failure));
    });
    worker.on("error", (error) => this.#end(error instanceof Error ? error.message : String(error)));
    worker.on("exit", (code) => this.#end(`exit ${code}`));
    this.#worker = worker;
    return worker;
  }

  #end(why: string): void {
    this.#worker = undefined;
    for (const { reject } of this.#waiting.values()) reject(new BuildError(why));
    this.#waiting.clear();
  }
}
