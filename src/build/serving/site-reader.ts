import { existsSync } from "node:fs";
import { join } from "node:path";
import { contentPath } from "../../input/files/content-folder.ts";
import { KitCrew } from "../kits/kit-crew.ts";
import { Gathering } from "../library/gathering.ts";
import { holdLibrary } from "../library/held-library.ts";
import type { KitEntry, ReadKits } from "../library/kit-entry.ts";
import { type Library, openLibrary } from "../library/library.ts";
import type { SiteFacts } from "../library/site-facts.ts";
import { Store } from "../store/store.ts";
import { HeldFacts } from "./held-facts.ts";
import { HeldKits } from "./held-kits.ts";
import { tellLeftOut } from "./tell-left-out.ts";

/** Reads a site again and again: of what it reads, only what changed. */
export class SiteReader {
  readonly store = new Store();
  readonly crew = new KitCrew(this.store);
  readonly #base: string;
  readonly #facts = new HeldFacts();
  readonly #kits = new HeldKits();
  #library: Library | undefined;
  /** Whether kits that are not known wait: at the beginning, what stands at once counts. */
  #isBeginning = true;

  /** `base` is the project's folder. */
  constructor(base: string) {
    this.#base = base;
  }

  /** The site as it was read last; undefined before that. */
  get library(): Library | undefined {
    return this.#library;
  }

  /** Reads the site, and tells what it is without; at the beginning only what is kept of its kits. @throws Error where nothing can be read */
  async open(): Promise<void> {
    // Threads hold what all parts shared when they were started.
    if (this.#readFacts().key !== this.#library?.key) await this.rest();
    const readKits = (facts: SiteFacts): ReadKits =>
      this.#isBeginning
        ? this.#kits.knownReader(facts, (folder) => this.crew.kept(folder, facts))
        : this.#reader(facts);
    const library = await openLibrary(
      this.#base,
      { whenBroken: "leave out", drafts: "take" },
      { store: this.store, readFacts: this.#facts.read, readKits },
    );
    this.#library = library;
    holdLibrary(library);
    if (library.waiting.kits.size > 0) return;
    this.#isBeginning = false;
    tellLeftOut(library);
  }

  /** From now on kits are read that are not known, whatever that takes. */
  endBeginning(): void {
    this.#isBeginning = false;
  }

  /** Reads kits by their names, so that they are known when the site is opened next. */
  async read(slugs: readonly string[]): Promise<void> {
    const facts = this.#readFacts();
    const folders = slugs.map((slug) => join(this.#base, contentPath(`kits/${slug}`))).filter((one) => existsSync(one));
    if (folders.length > 0) await this.#kits.reader(facts, this.crew.reader(facts))(folders);
  }

  /** Reads kits alone, of those that the library has; none where what all of them share has changed. */
  async readAgain(slugs: readonly string[]): Promise<readonly KitEntry[]> {
    const library = this.#library!;
    const facts = this.#readFacts();
    const known = slugs.filter((slug) => library.kits.some((kit) => kit.slug === slug));
    if (known.length === 0 || facts.key !== library.key) return [];
    const news = await this.#reader(facts)(known.map(library.folder));
    return news.flatMap(({ entry }) => entry ?? []);
  }

  /** Lets threads go until there is more to do, and clears up what is kept. */
  async rest(): Promise<void> {
    this.store.close(await this.crew.close());
  }

  #readFacts(): SiteFacts {
    return this.#facts.read(this.#base, new Gathering("leave out"), this.store);
  }

  #reader(facts: SiteFacts): ReadKits {
    return this.#kits.reader(facts, this.crew.reader(facts));
  }
}
