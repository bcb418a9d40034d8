import { availableParallelism } from "node:os";
import type { KitEntry, KitNews, ReadKits } from "../library/kit-entry.ts";
import type { Library } from "../library/library.ts";
import type { Surroundings } from "../library/page-source.ts";
import type { SiteFacts } from "../library/site-facts.ts";
import type { Placing } from "../store/placing.ts";
import type { Store } from "../store/store.ts";
import { CrewMember } from "./crew-member.ts";
import { entryKey, kitPart, stageKeys } from "./kit-keys.ts";
import { KitMaker, type KitTask } from "./kit-maker.ts";
import { KIT_STAGES, type KitStageName, PUBLISHED_STAGES } from "./kit-stages.ts";
import { kitKey } from "./read-kit-entry.ts";

/** So many kits are read or made at once by a thread: each call has a cost of its own, and all of them are held till its end. */
const BATCH = 4;

/** More threads than that wait for the disk. */
const MOST_THREADS = 8;

/** Up to so many kits, starting threads takes longer than making them. */
const ALONE = 6;

/** Where kits are made. */
export interface Site {
  readonly placing: Placing;
  readonly aside: string;
  readonly surroundings: Surroundings;
}

/** Reads and makes the kits of a site: what is kept is taken from the store, and the rest is spread over threads; without any it is made here. */
export class KitCrew {
  readonly #store: Store;
  readonly #threads: number;
  #facts: SiteFacts | undefined;
  readonly #members: CrewMember[] = [];
  readonly #used: string[] = [];

  constructor(store: Store, threads = Math.min(MOST_THREADS, availableParallelism())) {
    this.#store = store;
    this.#threads = threads;
  }

  /** Reads kits with the facts of their site. */
  reader(facts: SiteFacts): ReadKits {
    this.#facts = facts;
    return async (folders) => {
      const news = new Map<string, KitNews>();
      for (const folder of folders) {
        const kept = this.kept(folder, facts);
        if (kept) news.set(folder, kept);
      }
      const missing = folders.filter((folder) => !news.has(folder));
      await this.#inBatches(missing, async (batch, worker) => {
        const read = await worker.read(batch);
        for (const [i, folder] of batch.entries()) news.set(folder, read[i]!);
      });
      return folders.map((folder) => news.get(folder)!);
    };
  }

  /** What is kept of a kit as it is now; undefined where it has to be read. */
  kept(folder: string, facts: SiteFacts): KitNews | undefined {
    this.#facts = facts;
    return this.#store.take<KitNews>(entryKey(kitKey(folder, facts)))?.data;
  }

  /** Puts all that belongs to kits, or what some stages make of them, in place in a site. @throws KitError */
  async make(
    kits: readonly KitEntry[],
    { folder }: Pick<Library, "folder">,
    { placing, aside, surroundings }: Site,
    asked: readonly KitStageName[] = PUBLISHED_STAGES.map(({ name }) => name),
  ): Promise<void> {
    const stageKey = stageKeys(surroundings);
    const tasks = kits.map((entry): KitTask => {
      const stages = KIT_STAGES.filter(({ name }) => asked.includes(name)).filter((stage) => {
        const part = kitPart(entry.slug, stage.name);
        const key = stageKey(stage, entry.key);
        if (placing.stands(part, key)) return false;
        const kept = this.#store.take(key);
        if (kept) placing.put(part, key, kept.files);
        return kept === undefined;
      });
      return { entry, folder: folder(entry.slug), stages: stages.map(({ name }) => name) };
    });
    const wanted = tasks.filter(({ stages }) => stages.length > 0);
    await this.#inBatches(wanted, async (batch, worker) => {
      const placed = await worker.make({ kits: batch, output: placing.output, aside, surroundings });
      for (const part of placed) placing.note(part);
    });
  }

  /** Sends the threads home, and what they hold with them; others are called when there is more to do. */
  async sendHome(): Promise<void> {
    const members = this.#members.splice(0);
    for (const used of await Promise.all(members.map((member) => member.close()))) this.#used.push(...used);
  }

  /** The same at the end; gives back names of what all threads used of the store. */
  async close(): Promise<string[]> {
    await this.sendHome();
    return this.#used;
  }

  async #inBatches<T>(
    all: readonly T[],
    work: (batch: readonly T[], worker: Pick<KitMaker, "read" | "make">) => Promise<void>,
  ): Promise<void> {
    if (this.#threads === 0 || (all.length <= ALONE && this.#members.length === 0)) {
      if (all.length > 0) await work(all, new KitMaker(this.#facts!, this.#store));
      return;
    }
    const size = Math.min(BATCH, Math.ceil(all.length / this.#threads));
    const batches = Array.from({ length: Math.ceil(all.length / size) }, (_, i) => all.slice(i * size, (i + 1) * size));
    while (this.#members.length < Math.min(this.#threads, batches.length))
      this.#members.push(new CrewMember(this.#facts!.base));
    const waiting = batches.values();
    await Promise.all(
      this.#members.map(async (member) => {
        for (const batch of waiting) await work(batch, member);
      }),
    );
  }
}
