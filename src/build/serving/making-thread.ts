import { Worker } from "node:worker_threads";
import type { DeskState, PrintAsk, PrintingNews } from "../../input/desk/protocol.ts";
import { readSoFar } from "../../input/words/fluent.ts";
import type { LentWords } from "../library/first-words.ts";
import type { ServedPlace } from "./site-maker.ts";

/** What the thread that makes a served site is asked: to follow changes of files, or to print what an address leads to. */
export type Asked =
  | { readonly ask: "follow"; readonly paths: readonly string[] }
  | { readonly ask: "print"; readonly id: number; readonly path: string }
  | { readonly ask: "print all"; readonly of: PrintAsk }
  | { readonly ask: "visit"; readonly id: number; readonly path: string };

/** What it tells. */
export type Told =
  | { readonly told: "shown" }
  /** What the desk shows of the site. */
  | { readonly told: "state"; readonly state: DeskState }
  /** Something could not be made, and why. */
  | { readonly told: "failed"; readonly sentence: string }
  /** How far it is with printing all of a kit or of a class. */
  | { readonly told: "printing"; readonly news: PrintingNews }
  /** Nothing could be read: the exit code. */
  | { readonly told: "nothing"; readonly code: number }
  /** What stands at a path is made, or cannot be. */
  | { readonly told: "visited"; readonly id: number }
  /** What became of printing: a text that says why it failed. */
  | { readonly told: "printed"; readonly id: number; readonly failure: string | undefined };

/** What the thread works with. */
export interface Workplace extends ServedPlace {
  readonly content: string;
  readonly words: LentWords;
}

/** Who hears of the site that is made. */
export interface Audience {
  /** Something is new to see. */
  readonly shown: () => void;
  /** Something was found of the site. */
  readonly found: (state: DeskState) => void;
  /** Something could not be made. */
  readonly failed: (sentence: string) => void;
  /** Printing goes on, or ended. */
  readonly printing: (news: PrintingNews) => void;
  /** Nothing could be read at the first start. */
  readonly nothing: (code: number) => void;
}

/** A thread that makes the served site, so that requests are answered meanwhile. */
export class MakingThread {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, (failure: string | undefined) => void>();
  #asked = 0;

  constructor(place: Omit<Workplace, "words">) {
    const workplace: Workplace = { ...place, words: readSoFar() };
    this.#worker = new Worker(new URL("./making-worker.ts", import.meta.url), { workerData: workplace });
    this.#worker.on("error", (error) => {
      throw error;
    });
    // Without it nothing follows any more: that is never left unsaid.
    this.#worker.on("exit", (code) => {
      throw new Error(`the thread that makes the served site ended with ${code}`);
    });
  }

  /** Tells an audience what comes of what is asked; nothing was asked before. */
  tell({ shown, found, failed, printing, nothing }: Audience): void {
    this.#worker.on("message", (told: Told) => {
      if (told.told === "shown") shown();
      else if (told.told === "state") found(told.state);
      else if (told.told === "failed") failed(told.sentence);
      else if (told.told === "printing") printing(told.news);
      else if (told.told === "nothing") nothing(told.code);
      else {
        this.#waiting.get(told.id)?.("failure" in told ? told.failure : undefined);
        this.#waiting.delete(told.id);
      }
    });
  }

  /** Makes what changed; the first time all. */
  follow(paths: readonly string[]): void {
    this.#ask({ ask: "follow", paths });
  }

  /** Prints the PDF at a path below the site, where a build would. Gives a page that says why that failed. */
  print(path: string): Promise<string | undefined> {
    return this.#askFor((id) => ({ ask: "print", id, path }));
  }

  /** Makes first what stands at a path below the site, with a slash before it; settles when it is made, or cannot be. */
  async visit(path: string): Promise<void> {
    await this.#askFor((id) => ({ ask: "visit", id, path }));
  }

  /** Prints all PDFs of a kit or of a class; how far that is comes as news. */
  printAll(of: PrintAsk): void {
    this.#ask({ ask: "print all", of });
  }

  #askFor(asked: (id: number) => Asked): Promise<string | undefined> {
    this.#asked += 1;
    const id = this.#asked;
    return new Promise((resolve) => {
      this.#waiting.set(id, resolve);
      this.#ask(asked(id));
    });
  }

  #ask(asked: Asked): void {
    this.#worker.postMessage(asked);
  }
}
