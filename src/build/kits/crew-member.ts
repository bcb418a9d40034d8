import { setFlagsFromString } from "node:v8";
import { Worker } from "node:worker_threads";
import { contentPath } from "../../input/files/content-folder.ts";
import { KitError, type KitMessage } from "../../input/files/message.ts";
import { readSoFar } from "../../input/words/fluent.ts";
import { BuildError } from "../errors/build-error.ts";
import type { LentWords } from "../library/first-words.ts";
import type { KitNews } from "../library/kit-entry.ts";
import type { PlacedPart } from "../store/placing.ts";
import type { KitTasks } from "./kit-maker.ts";

/** What a thread is asked. */
export type Asked =
  | { readonly ask: "read"; readonly folders: readonly string[] }
  | { readonly ask: "make"; readonly tasks: KitTasks }
  | { readonly ask: "used" };

/** What it answers: or what is wrong with the content or on the machine, or a fault as it was thrown, with what the system says of it. */
export type Answer =
  | { readonly done: unknown }
  | { readonly messages: readonly KitMessage[] }
  | { readonly refused: string }
  | { readonly fault: unknown; readonly system: object };

/** What a thread works with. */
export interface Workplace {
  readonly base: string;
  readonly content: string;
  readonly words: LentWords;
}

/** Most of what is new in a kit is soon done with: the less is let lie, the smaller a thread stays, MB. */
const LIMITS = { maxYoungGenerationSizeMb: 16 } as const;

/** What lives on is cleared up when it is so much more than after the last time, %: by itself V8 waits for up to four times as much, in each thread. */
const GROWTH = 60;

/** A thread that reads and makes kits, asked one thing after the other. */
export class CrewMember {
  readonly #worker: Worker;

  constructor(base: string) {
    const workerData: Workplace = { base, content: contentPath(), words: readSoFar() };
    setFlagsFromString(`--heap-growing-percent=${GROWTH}`);
    this.#worker = new Worker(new URL("./kit-worker.ts", import.meta.url), { workerData, resourceLimits: LIMITS });
    // Its end is told to whoever waits for an answer.
    this.#worker.on("error", () => undefined);
  }

  read(folders: readonly string[]): Promise<KitNews[]> {
    return this.#ask<KitNews[]>({ ask: "read", folders });
  }

  /** @throws KitError for photos that cannot be read any more */
  make(tasks: KitTasks): Promise<PlacedPart[]> {
    return this.#ask<PlacedPart[]>({ ask: "make", tasks });
  }

  /** Ends the thread; gives back names of what it used of the store. */
  async close(): Promise<string[]> {
    const used = await this.#ask<string[]>({ ask: "used" });
    await this.#worker.terminate();
    return used;
  }

  #ask<T>(asked: Asked): Promise<T> {
    return new Promise((resolve, reject) => {
      const worker = this.#worker;
      const end = (then: () => void): void => {
        worker.off("message", told).off("error", failed).off("exit", gone);
        then();
      };
      const told = (answer: Answer): void => end(() => settle(answer, resolve as (done: unknown) => void, reject));
      const failed = (error: unknown): void => end(() => reject(error));
      const gone = (code: number): void => end(() => reject(new Error(`a thread that makes kits ended with ${code}`)));
      worker.once("message", told).once("error", failed).once("exit", gone);
      worker.postMessage(asked);
    });
  }
}

function settle(answer: Answer, resolve: (done: unknown) => void, reject: (error: unknown) => void): void {
  if ("done" in answer) resolve(answer.done);
  else if ("messages" in answer) reject(new KitError(answer.messages));
  else if ("refused" in answer) reject(new BuildError(answer.refused));
  // What is sent from a thread loses all but its message: the disk's faults are known by their codes.
  else reject(answer.fault instanceof Error ? Object.assign(answer.fault, answer.system) : answer.fault);
}
