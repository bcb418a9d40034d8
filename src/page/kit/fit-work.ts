import type { KitData } from "../shared/kit-data.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";
import { type Asked, type AskedWith, type FromWorker, type MadeOf, makeAsked, type ToWorker } from "./fit-asks.ts";
import { FitMaker } from "./fit-maker.ts";
import { Turns } from "./turns.ts";

/** Where the page itself works, what is slow waits this long for another key, ms. */
const REST = 200;

/** An ask that the worker has not answered. */
interface Waiting {
  readonly turn: number;
  readonly ask: Asked;
  readonly told: readonly unknown[];
  readonly resolve: (made: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/** Has a worker make what the page shows of a book, or makes it here where there is none: a page from the disk has none. */
export class FitWork {
  #worker: Worker | undefined;
  /** What goes to the worker together once the page has said all that it asks. */
  #told: ToWorker[] = [];
  readonly #waiting = new Map<number, Waiting>();
  #asked = 0;
  readonly #maker: FitMaker;
  readonly #turns = new Turns();

  /** `script` is what the worker runs, `address` where the kit's data are. */
  constructor(data: KitData, script: string, address: string) {
    this.#maker = new FitMaker(data, loadScript);
    try {
      this.#worker = new Worker(script);
      this.#worker.onmessage = ({ data: told }: MessageEvent<FromWorker>) => this.#hear(told);
      this.#worker.onerror = () => this.#goOnHere();
      this.#tell({ data: new URL(address, location.href).href });
    } catch {
      this.#worker = undefined;
    }
  }

  /** Whether the page's own work goes on meanwhile. */
  get isBeside(): boolean {
    return this.#worker !== undefined;
  }

  /** What is made; undefined where a newer turn was asked for. @throws LoadError */
  make<K extends Asked>(turn: number, ask: K, ...told: AskedWith<K>): Promise<MadeOf<K> | undefined> {
    return new Promise<unknown>((resolve, reject) => {
      const waiting = { turn, ask, told, resolve, reject };
      if (!this.#worker) {
        this.#here(waiting);
        return;
      }
      this.#asked += 1;
      this.#waiting.set(this.#asked, waiting);
      this.#tell({ id: this.#asked, turn, ask, with: told });
    }) as Promise<MadeOf<K> | undefined>;
  }

  #tell(message: ToWorker): void {
    this.#told.push(message);
    if (this.#told.length > 1) return;
    queueMicrotask(() => {
      this.#worker?.postMessage(this.#told);
      this.#told = [];
    });
  }

  #hear({ id, made, needed, failed }: FromWorker): void {
    const waiting = this.#waiting.get(id);
    this.#waiting.delete(id);
    if (!waiting) return;
    if (failed) this.#here(waiting);
    else if (needed) waiting.reject(new LoadError(needed));
    else waiting.resolve(made);
  }

  #here({ turn, ask, told, resolve, reject }: Waiting): void {
    const [first] = told as readonly [{ readonly quick?: boolean }?];
    const rest = ask === "fit" && !first?.quick ? REST : 0;
    this.#turns.take(turn, () => makeAsked(this.#maker, ask, told), rest).then(resolve, reject);
  }

  /** The worker's script could not be loaded. */
  #goOnHere(): void {
    this.#worker?.terminate();
    this.#worker = undefined;
    const left = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const waiting of left) this.#here(waiting);
  }
}
