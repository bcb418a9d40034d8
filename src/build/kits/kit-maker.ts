import { join } from "node:path";
import { onceEach } from "../../core/lazily.ts";
import { plainCatalogue } from "../../input/catalogue/read-catalogue.ts";
import { contentPath } from "../../input/files/content-folder.ts";
import type { KitEntry, KitNews } from "../library/kit-entry.ts";
import { recordedView, recordKey } from "../library/kit-record.ts";
import { NO_PAGES, type PageSource, type Surroundings } from "../library/page-source.ts";
import type { SiteFacts } from "../library/site-facts.ts";
import { isStill } from "../store/folder-key.ts";
import { filesOf, gatherMade } from "../store/gather.ts";
import type { PlacedPart } from "../store/placing.ts";
import type { Store } from "../store/store.ts";
import { writeMade } from "../store/write-made.ts";
import { entryKey, kitPart, stageKeys } from "./kit-keys.ts";
import { KIT_STAGES, type KitStageName } from "./kit-stages.ts";
import { readKitEntry } from "./read-kit-entry.ts";

/** A kit of which some stages are to be made. */
export interface KitTask {
  readonly entry: KitEntry;
  readonly folder: string;
  readonly stages: readonly KitStageName[];
}

/** Kits that are made together, into which site. */
export interface KitTasks {
  readonly kits: readonly KitTask[];
  readonly output: string;
  /** A folder for what is not yet part of the site. */
  readonly aside: string;
  readonly surroundings: Surroundings;
}

/** Reads and makes kits, a few at once, and keeps what was made; nothing of them is held from one call to the next. */
export class KitMaker {
  readonly #facts: SiteFacts;
  readonly #store: Store;

  constructor(facts: SiteFacts, store: Store) {
    this.#facts = facts;
    this.#store = store;
  }

  async read(folders: readonly string[]): Promise<KitNews[]> {
    const all: KitNews[] = [];
    for (const folder of folders) {
      let { read, ...told } = await readKitEntry(folder, this.#facts);
      // What was changed while it was read must not be kept under the name of what it was.
      while (!isStill(folder, join(this.#facts.base, contentPath())))
        ({ read, ...told } = await readKitEntry(folder, this.#facts));
      const news: KitNews = { ...told, entry: read?.entry };
      if (read) this.#store.put(recordKey(read.entry.key), { files: [], data: read.kit });
      if (read && told.letters.length + told.photos.length === 0)
        this.#store.put(entryKey(read.entry.key), { files: [], data: news });
      all.push(news);
    }
    return all;
  }

  /** Makes what is asked for, into the site. @throws KitError for photos that cannot be read any more */
  async make({ kits, output, aside, surroundings }: KitTasks): Promise<PlacedPart[]> {
    const source = this.#sourceOf(kits, surroundings);
    const stageKey = stageKeys(surroundings);
    const placed: PlacedPart[] = [];
    for (const stage of KIT_STAGES) {
      const wanted = kits.filter(({ stages }) => stages.includes(stage.name));
      if (wanted.length === 0) continue;
      const batch = { base: this.#facts.base, kits: wanted.map(({ entry }) => entry), source };
      // What changes while it is made must not be found under its new name.
      const keys = new Map(wanted.map(({ entry }) => [entry.slug, stageKey(stage, entry.key)]));
      const files = await gatherMade(aside, (scratch) => stage.run({ ...batch, output: scratch }));
      for (const { entry } of wanted) {
        const own = filesOf(files, (path) => isOf(entry.slug, path));
        const key = keys.get(entry.slug)!;
        this.#store.put(key, { files: own, data: undefined });
        writeMade(output, own);
        const named = own.map(({ path, name }) => ({ path, name }));
        placed.push({ part: kitPart(entry.slug, stage.name), key, files: named });
      }
    }
    return placed;
  }

  #sourceOf(kits: readonly KitTask[], surroundings: Surroundings): PageSource {
    const facts = this.#facts;
    const taskOf = (slug: string): KitTask => {
      const task = kits.find(({ entry }) => entry.slug === slug);
      if (!task) throw new Error(`no kit "${slug}" is made here`);
      return task;
    };
    const none = (name: string): never => {
      throw new Error(`pages of kits show no "${name}"`);
    };
    return {
      ...facts,
      ...surroundings,
      wanted: NO_PAGES,
      catalogue: plainCatalogue(),
      guide: [],
      kits: kits.map(({ entry }) => entry),
      hasWaiting: false,
      classes: [],
      view: onceEach((slug: string) => {
        const { entry, folder } = taskOf(slug);
        return recordedView(this.#store, entry.key, folder, facts);
      }),
      classView: none,
      troubles: none,
      guidePage: none,
      story: (page) => taskOf(page.split("/")[2]!).entry.story,
    };
  }
}

/** Whether a file below the site belongs to a kit. */
function isOf(slug: string, path: string): boolean {
  return path.startsWith(`kits/${slug}/`) || path.startsWith(`author/${slug}/`);
}
