import type { Kit } from "../../../core/kit/kit.ts";
import type { LevelMap } from "../../../core/picture/level-map.ts";
import { FAR, type FitAnswer, type FitAsk, type Found, NEAR, type Stage } from "./fit-work.ts";

/**
 * Has workers find out what takes longer than a frame: light and window, what will be seen, and when it rests, what would help.
 * What a page shows while a handle is dragged it computes itself, by `fitKit` without light and window.
 *
 *     const bench = new FitBench();
 *     bench.look(kit, (found) => …);   // called for each stage of `Found`; never again for a kit after another was looked at
 *     bench.end();                      // when the view is left
 */
export class FitBench {
  readonly #near: FitHelper;
  readonly #far: FitHelper;
  readonly #rest: number;
  #waits: ReturnType<typeof setTimeout> | undefined;

  /** `open` starts a worker; `rest` is how long nothing may change before ways are looked for, ms. */
  constructor(open: () => Worker = openWorker, rest = REST) {
    this.#near = new FitHelper(open, NEAR);
    this.#far = new FitHelper(open, FAR);
    this.#rest = rest;
  }

  look(kit: Kit, hear: (found: Found) => void): void {
    clearTimeout(this.#waits);
    this.#far.leave();
    this.#near.ask(kit, hear);
    this.#waits = setTimeout(() => this.#far.ask(kit, hear), this.#rest);
  }

  end(): void {
    clearTimeout(this.#waits);
    this.#near.end();
    this.#far.end();
  }
}

/** A pause after which a maker may read, ms. */
const REST = 350;

function openWorker(): Worker {
  return new Worker("/assets/desk-worker.js", { type: "module" });
}

/** One worker, which is given the newest kit when it has done with the one before. */
class FitHelper {
  readonly #open: () => Worker;
  readonly #stages: readonly Stage[];
  #worker: Worker | undefined;
  /** The picture that the worker has. */
  #picture: LevelMap | undefined;
  #turn = 0;
  #isBusy = false;
  #next: Kit | undefined;
  #hear: (found: Found) => void = () => {};

  constructor(open: () => Worker, stages: readonly Stage[]) {
    this.#open = open;
    this.#stages = stages;
  }

  ask(kit: Kit, hear: (found: Found) => void): void {
    this.#hear = hear;
    this.#turn += 1;
    if (this.#isBusy) this.#next = kit;
    else this.#send(kit);
  }

  /** What it is at is of no use any more: it may take a second, and a new worker is there sooner. */
  leave(): void {
    this.#turn += 1;
    this.#next = undefined;
    if (this.#isBusy) this.end();
  }

  end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#picture = undefined;
    this.#isBusy = false;
  }

  #send({ picture, ...kit }: Kit): void {
    this.#worker ??= this.#start();
    const isNew = picture !== this.#picture;
    this.#picture = picture;
    this.#isBusy = true;
    const turn = this.#turn;
    const ask: FitAsk = { turn, stages: this.#stages, kit, picture: isNew ? picture : undefined };
    this.#worker.postMessage(ask);
  }

  #start(): Worker {
    const worker = this.#open();
    worker.onmessage = ({ data }: MessageEvent<FitAnswer>) => {
      if (worker === this.#worker) this.#take(data);
    };
    return worker;
  }

  #take(answer: FitAnswer): void {
    if ("found" in answer) {
      if (answer.turn === this.#turn) this.#hear(answer.found);
      return;
    }
    this.#isBusy = false;
    const next = this.#next;
    this.#next = undefined;
    if (next) this.#send(next);
  }
}
