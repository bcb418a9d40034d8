import { contentPath } from "../../input/files/content-folder.ts";
import { makeScripts } from "../bundle/make-scripts.ts";
import { tellFailure } from "../errors/command.ts";
import { copyFonts } from "../fonts/copy-fonts.ts";
import { KitCrew, type Site } from "../kits/kit-crew.ts";
import type { KitStageName } from "../kits/kit-stages.ts";
import { Gathering } from "../library/gathering.ts";
import { holdLibrary } from "../library/held-library.ts";
import type { KitEntry, ReadKits } from "../library/kit-entry.ts";
import { type Library, openLibrary } from "../library/library.ts";
import type { SiteFacts } from "../library/site-facts.ts";
import { retireWorker } from "../offline/write-offline.ts";
import { makeRest } from "../rest/make-rest.ts";
import { Placing } from "../store/placing.ts";
import { Store } from "../store/store.ts";
import { HeldFacts } from "./held-facts.ts";
import { HeldKits } from "./held-kits.ts";
import { tellLeftOut } from "./tell-left-out.ts";

/** Where a site is made that is served. */
export interface ServedPlace {
  /** The project's folder. */
  readonly base: string;
  readonly output: string;
  /** A folder for what is not yet part of the site. */
  readonly aside: string;
}

/** Who follows a turn. */
export interface Follower {
  /** Called when there is something new to see. */
  readonly show: () => void;
  /** Whether something changed meanwhile: then the rest of a turn is left to the next one. */
  readonly hasNews: () => boolean;
}

type Step = () => Promise<void> | void;

/** What an author looks at first, and what may wait. */
const SEEN: readonly KitStageName[] = ["pages", "data"];
const BESIDE: readonly KitStageName[] = ["pictures", "photos", "author", "cut files"];

/** What a page shows. */
const SHOWN = /\.(html|css|js|svg|webp|jpg|png|woff2)$/;

/** What is copied once for all that parts share. */
const FONTS = "fonts";

/** After so many kits it is looked whether something changed meanwhile. */
const AT_ONCE = 16;

/** Makes a site in the folder that it is served from, turn by turn: each makes what changed, and the pages of kits that changed first. */
export class SiteMaker {
  readonly #place: ServedPlace;
  readonly #store = new Store();
  readonly #crew = new KitCrew(this.#store);
  readonly #facts = new HeldFacts();
  readonly #kits = new HeldKits();
  readonly #placing: Placing;
  #library: Library | undefined;
  #isShown = false;

  constructor(place: ServedPlace) {
    this.#place = place;
    this.#placing = new Placing(place.output);
  }

  /** The site as it was read last; undefined before the first turn. */
  get library(): Library | undefined {
    return this.#library;
  }

  /**
   * Makes what changed; `kits` are names of those in whose folders something did. What cannot be made is told, and stops nothing else.
   * @returns whether the site is whole: nothing failed, and nothing was left to the next turn @throws Error where nothing could be read yet
   */
  async turn(kits: readonly string[], { show, hasNews }: Follower): Promise<boolean> {
    let isWhole = true;
    for (const step of this.#steps(kits, show)) {
      try {
        await step();
      } catch (error) {
        if (!this.#library) throw error;
        tellFailure(error);
        isWhole = false;
      }
      if (this.#isShown && hasNews()) return false;
    }
    // What failed was not asked for, and would be taken away.
    if (isWhole) this.#placing.sweep();
    this.#show(show);
    this.#store.close(await this.#crew.close());
    return isWhole;
  }

  *#steps(kits: readonly string[], show: Follower["show"]): Generator<Step> {
    const isLater = this.#isShown;
    if (isLater) yield () => this.#makeFirst(kits);
    else {
      yield () => this.#open();
      yield* this.#kitSteps(SEEN);
      yield* this.#restSteps();
    }
    yield () => this.#show(show);
    if (isLater) {
      yield () => this.#open();
      yield* this.#kitSteps(SEEN);
    }
    yield* this.#kitSteps(BESIDE);
    yield* this.#restSteps();
    yield () => this.#makeScripts();
  }

  /** Makes the pages of kits before the rest of the site is read again. */
  async #makeFirst(kits: readonly string[]): Promise<void> {
    const library = this.#library!;
    const facts = this.#facts.read(this.#place.base, new Gathering("leave out"));
    const known = kits.filter((slug) => library.kits.some((kit) => kit.slug === slug));
    if (known.length === 0 || facts.key !== library.key) return;
    const news = await this.#reader(facts)(known.map(library.folder));
    const entries = news.flatMap(({ entry }) => entry ?? []);
    await this.#crew.make(entries, library, this.#site(library), ["pages"]);
  }

  async #open(): Promise<void> {
    const { base } = this.#place;
    const facts = this.#facts.read(base, new Gathering("leave out"));
    // Threads hold what all parts shared when they were started.
    if (facts.key !== this.#library?.key) this.#store.close(await this.#crew.close());
    const reading = {
      store: this.#store,
      readFacts: this.#facts.read,
      readKits: (facts: SiteFacts) => this.#reader(facts),
    };
    const library = await openLibrary(base, { whenBroken: "leave out", drafts: "take" }, reading);
    this.#library = library;
    holdLibrary(library);
    tellLeftOut(library);
  }

  *#kitSteps(stages: readonly KitStageName[]): Generator<Step> {
    const library = this.#library!;
    // Photos that cannot be read were told when the site was read.
    const isSound = ({ slug }: KitEntry): boolean =>
      library.photoMessages.every(({ file }) => file !== contentPath(`kits/${slug}/index.md`));
    for (let i = 0; i < library.kits.length; i += AT_ONCE) {
      const { sound = [], unsound = [] } = Object.groupBy(library.kits.slice(i, i + AT_ONCE), (kit) =>
        isSound(kit) ? "sound" : "unsound",
      );
      const others = stages.filter((stage) => stage !== "photos");
      yield () => this.#crew.make(sound, library, this.#site(library), stages);
      yield () => this.#crew.make(unsound, library, this.#site(library), others);
    }
  }

  *#restSteps(): Generator<Step> {
    const library = this.#library!;
    const site = this.#site(library);
    const isOfClass = (part: string): boolean => part.startsWith("classes/");
    yield () => makeRest(library, site, (part) => !isOfClass(part));
    for (const { slug } of library.classes) yield () => makeRest(library, site, (part) => part === `classes/${slug}`);
    yield () => this.#copyFonts(library);
  }

  #copyFonts(library: Library): void {
    const { base, output } = this.#place;
    if (this.#placing.stands(FONTS, library.key)) return;
    copyFonts(base, output, library.fonts);
    retireWorker(output);
    this.#placing.note({ part: FONTS, key: library.key, files: [] });
  }

  async #makeScripts(): Promise<void> {
    const library = this.#library!;
    await makeScripts(this.#store, library, this.#site(library));
  }

  #reader(facts: SiteFacts): ReadKits {
    return this.#kits.reader(facts, this.#crew.reader(facts));
  }

  #site({ hasGuide, hasFeed }: Library): Site {
    const surroundings = { hasGuide, hasFeed, isServed: true };
    return { placing: this.#placing, aside: this.#place.aside, surroundings };
  }

  #show(show: Follower["show"]): void {
    const changed = this.#placing.takeChanged();
    if (!this.#isShown || changed.some((path) => SHOWN.test(path))) show();
    this.#isShown = true;
  }
}
