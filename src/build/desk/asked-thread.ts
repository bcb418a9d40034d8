import { type ResourceLimits, Worker } from "node:worker_threads";
import * as say from "../../words/messages.ts";
import { BuildError } from "../errors/build-error.ts";
import { foreseen } from "../errors/foreseen.ts";
import { programFault } from "../errors/program-fault.ts";

/** Where a thread of the desk works. */
export interface ThreadPlace {
  readonly base: string;
  /** The folder of the site's content. */
  readonly content: string;
}

/** A question as a thread gets it. */
export type Numbered<Question> = Question & { readonly id: number };

/** What a thread answers: what was asked for, or in words why there is nothing. */
export type ThreadAnswer = { readonly id: number } & ({ readonly answer: unknown } | { readonly failure: string });

interface Waiting {
  readonly resolve: (answer: unknown) => void;
  readonly reject: (error: Error) => void;
}

/** A thread that answers questions. It starts when it is first asked, and again after one that it did not survive. */
export class AskedThread<Question extends object> {
  readonly #script: URL;
  readonly #place: ThreadPlace;
  readonly #limits: ResourceLimits;
  readonly #waiting = new Map<number, Waiting>();
  #thread: Worker | undefined;
  #asked = 0;

  constructor(script: URL, place: ThreadPlace, limits: ResourceLimits = {}) {
    this.#script = script;
    this.#place = place;
    this.#limits = limits;
  }

  /** @throws BuildError where there is no answer */
  ask<Answer>(question: Question): Promise<Answer> {
    this.#asked += 1;
    const id = this.#asked;
    const { promise, resolve, reject } = Promise.withResolvers<unknown>();
    this.#waiting.set(id, { resolve, reject });
    this.start().postMessage({ ...question, id } satisfies Numbered<Question>);
    return promise as Promise<Answer>;
  }

  /** Starts it before it is asked: it takes a moment. */
  start(): Worker {
    if (this.#thread) return this.#thread;
    const thread = new Worker(this.#script, { workerData: this.#place, resourceLimits: this.#limits });
    thread.unref();
    thread.on("message", (told: ThreadAnswer) => this.#hear(told));
    thread.on("error", (error) => this.#lose(thread, this.#why(error)));
    thread.on("exit", (code) => this.#lose(thread, `exit ${code}`));
    this.#thread = thread;
    return thread;
  }

  /** Tells a thread that runs what needs no answer. */
  tell(told: object): void {
    this.#thread?.postMessage(told);
  }

  /** Ends it: all that it was asked is answered with the reason. */
  end(why: string): void {
    const thread = this.#thread;
    if (!thread) return;
    this.#lose(thread, why);
    void thread.terminate();
  }

  /** Ends it when nobody waits any more; settles when it is gone. */
  async close(): Promise<void> {
    const thread = this.#thread;
    this.#thread = undefined;
    await thread?.terminate();
  }

  #hear(told: ThreadAnswer): void {
    const waiting = this.#waiting.get(told.id);
    this.#waiting.delete(told.id);
    if ("failure" in told) waiting?.reject(new BuildError(told.failure));
    else waiting?.resolve(told.answer);
  }

  /** A picture may be too much for a thread; anything else is a fault of the program, or of the site’s words. */
  #why(error: unknown): string {
    if ((error as NodeJS.ErrnoException).code === "ERR_WORKER_OUT_OF_MEMORY") return say.newTooMuch();
    return foreseen(error) ?? programFault(error, this.#place.base);
  }

  #lose(thread: Worker, why: string): void {
    if (this.#thread !== thread) return;
    this.#thread = undefined;
    for (const { reject } of this.#waiting.values()) reject(new BuildError(why));
    this.#waiting.clear();
  }
}
