import { judge, type Verdict } from "../../../core/finder/verdict.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import { makeAny } from "../../../core/refit/any-making.ts";
import type { Refit } from "../../../core/refit/refit.ts";

/** A page's message to its worker: a seat's book, and its kit where the worker has not had it. */
export interface SeatAsk {
  readonly id: number;
  readonly slug: string;
  readonly kit: Kit | undefined;
  readonly refit: Refit;
}

export interface SeatAnswer {
  readonly id: number;
  readonly verdict: Verdict;
}

/** What a worker that judges seats needs of where it runs. */
export interface SeatHost {
  onmessage: ((event: { readonly data: SeatAsk }) => void) | null;
  postMessage(answer: SeatAnswer): void;
}

/** Judges in a worker what `SeatJudge` asks for. */
export function serveSeats(host: SeatHost): void {
  const kits = new Map<string, Kit>();
  host.onmessage = ({ data: { id, slug, kit, refit } }) => {
    if (kit) kits.set(slug, kit);
    host.postMessage({ id, verdict: verdictOf(kits.get(slug)!, refit) });
  };
}

/** How a seat's kit comes out in its book, as the catalogue judges a reader's. */
export function verdictOf(kit: Kit, refit: Refit): Verdict {
  return judge(kit, refit, makeAny);
}

/** Has a worker judge seats, one after the other; what was judged once is known. */
export class SeatJudge {
  readonly #open: () => Worker;
  readonly #told: () => void;
  readonly #known = new Map<string, Verdict>();
  readonly #waiting: Waiting[] = [];
  readonly #sent = new Map<string, Kit>();
  #worker: Worker | undefined;
  #at: Waiting | undefined;
  #id = 0;

  /** `told` is called after each verdict; `open` starts a worker. */
  constructor(told: () => void, open: () => Worker = openWorker) {
    this.#told = told;
    this.#open = open;
  }

  /** What is known of a seat; undefined while it is being judged. What is asked last is judged first. */
  verdict(kit: Kit, refit: Refit): Verdict | undefined {
    const key = `${kit.slug} ${JSON.stringify(refit)}`;
    const known = this.#known.get(key);
    if (known || this.#at?.key === key) return known;
    const at = this.#waiting.findIndex((one) => one.key === key);
    if (at >= 0) this.#waiting.splice(at, 1);
    this.#waiting.push({ key, kit, refit });
    this.#next();
    return undefined;
  }

  /** A kit is another one now. */
  forget(): void {
    this.#known.clear();
    this.#waiting.length = 0;
    // What is being judged is a seat of the kit as it was.
    if (this.#at) this.#at = { ...this.#at, key: OLD };
  }

  end(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    this.#sent.clear();
    this.#at = undefined;
    this.#waiting.length = 0;
  }

  #next(): void {
    const next = this.#at ? undefined : this.#waiting.pop();
    if (!next) return;
    this.#at = next;
    this.#worker ??= this.#start();
    const { kit, refit } = next;
    const isNew = this.#sent.get(kit.slug) !== kit;
    this.#sent.set(kit.slug, kit);
    this.#id += 1;
    const ask: SeatAsk = { id: this.#id, slug: kit.slug, kit: isNew ? kit : undefined, refit };
    this.#worker.postMessage(ask);
  }

  #start(): Worker {
    const worker = this.#open();
    worker.onmessage = ({ data: { id, verdict } }: MessageEvent<SeatAnswer>) => {
      if (worker !== this.#worker || id !== this.#id) return;
      const { key } = this.#at!;
      this.#at = undefined;
      if (key !== OLD) this.#known.set(key, verdict);
      this.#next();
      this.#told();
    };
    return worker;
  }
}

/** The key of a seat whose kit is another one by now: no seat asks for it. */
const OLD = "";

interface Waiting {
  readonly key: string;
  readonly kit: Kit;
  readonly refit: Refit;
}

function openWorker(): Worker {
  return new Worker("/assets/desk-worker.js", { type: "module", name: "seats" });
}
