import { existsSync } from "node:fs";
import { join } from "node:path";
import { contentPath } from "../../input/files/content-folder.ts";
import { makeScripts } from "../bundle/make-scripts.ts";
import { tellFailure } from "../errors/command.ts";
import { copyFonts } from "../fonts/copy-fonts.ts";
import type { Site } from "../kits/kit-crew.ts";
import type { KitStageName } from "../kits/kit-stages.ts";
import type { KitEntry } from "../library/kit-entry.ts";
import type { Library } from "../library/library.ts";
import { retireWorker } from "../offline/write-offline.ts";
import { makeRest } from "../rest/make-rest.ts";
import { Placing } from "../store/placing.ts";
import { SiteReader } from "./site-reader.ts";

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
  /** Called with the site when it was read again. */
  readonly read: (library: Library) => void;
  /** Whether something changed meanwhile: then the rest of a turn is left to the next one. */
  readonly hasNews: () => boolean;
}

type Step = () => Promise<void> | void;

/** What of a kit is made first, and what may wait. */
const FIRST: readonly KitStageName[] = ["pages", "data"];
const LATER: readonly KitStageName[] = ["pictures", "photos", "author", "cut files"];

/** What a page shows. */
const SHOWN = /\.(html|css|js|svg|webp|jpg|png|woff2)$/;

/** What is copied once for all that parts share. */
const FONTS = "fonts";

/** After so many kits it is looked whether something changed meanwhile. */
const AT_ONCE = 16;

/** Makes a site in the folder that it is served from, turn by turn: each makes what changed, and the pages of kits that changed first. */
export class SiteMaker {
  readonly #place: ServedPlace;
  readonly #reader: SiteReader;
  readonly #placing: Placing;
  #isShown = false;
  /** The messages that pages show. */
  #told = "";

  constructor(place: ServedPlace) {
    this.#place = place;
    this.#reader = new SiteReader(place.base);
    this.#placing = new Placing(place.output);
  }

  /** The site as it was read last; undefined before the first turn. */
  get library(): Library | undefined {
    return this.#reader.library;
  }

  /**
   * Makes what changed; `kits` are names of those in whose folders something did. What cannot be made is told, and stops nothing else.
   * @returns whether the site is whole: nothing failed, and nothing was left to the next turn @throws Error where nothing could be read yet
   */
  async turn(kits: readonly string[], { show, read, hasNews }: Follower): Promise<boolean> {
    let isWhole = true;
    for (const step of this.#isShown ? this.#laterTurn(kits, show, read) : this.#firstTurn(show, read)) {
      try {
        await step();
      } catch (error) {
        if (!this.library) throw error;
        tellFailure(error);
        isWhole = false;
      }
      if (this.#isShown && hasNews()) return false;
    }
    // What failed was not asked for, and would be taken away.
    if (isWhole) {
      this.#placing.keep((part) => this.#isLeftOut(part));
      this.#placing.sweep();
    }
    this.#show(show);
    await this.#reader.rest();
    return isWhole;
  }

  /** What is needed to look around, before all else. */
  *#firstTurn(show: Follower["show"], read: Follower["read"]): Generator<Step> {
    yield () => this.#reader.open();
    yield () => read(this.library!);
    yield* this.#kitSteps(FIRST);
    yield* this.#otherSteps();
    yield () => this.#show(show);
    yield* this.#kitSteps(LATER);
    yield () => this.#makeScripts();
  }

  /** Pages of kits that changed, before the site is read again and all else is looked through. */
  *#laterTurn(kits: readonly string[], show: Follower["show"], read: Follower["read"]): Generator<Step> {
    yield () => this.#makePages(kits);
    yield () => this.#show(show);
    yield () => this.#reader.open();
    yield () => read(this.library!);
    yield* this.#kitSteps(FIRST);
    yield* this.#kitSteps(LATER);
    yield* this.#otherSteps();
    yield () => this.#makeScripts();
  }

  async #makePages(slugs: readonly string[]): Promise<void> {
    const kits = await this.#reader.readAgain(slugs);
    await this.#reader.crew.make(kits, this.library!, this.#site(), ["pages"]);
  }

  *#kitSteps(stages: readonly KitStageName[]): Generator<Step> {
    const { kits, photoMessages } = this.library!;
    // Photos that cannot be read were told when the site was read.
    const isSound = ({ slug }: KitEntry): boolean =>
      photoMessages.every(({ file }) => file !== contentPath(`kits/${slug}/index.md`));
    const make = (some: readonly KitEntry[], made: readonly KitStageName[]): Promise<void> =>
      this.#reader.crew.make(some, this.library!, this.#site(), made);
    for (let i = 0; i < kits.length; i += AT_ONCE) {
      const { sound = [], unsound = [] } = Object.groupBy(kits.slice(i, i + AT_ONCE), (kit) =>
        isSound(kit) ? "sound" : "unsound",
      );
      yield () => make(sound, stages);
      yield () =>
        make(
          unsound,
          stages.filter((stage) => stage !== "photos"),
        );
    }
  }

  *#otherSteps(): Generator<Step> {
    const library = this.library!;
    const isOfClass = (part: string): boolean => part.startsWith("classes/");
    const make = (isAsked: (part: string) => boolean): Promise<void> => makeRest(library, this.#site(), isAsked);
    yield () => make((part) => !isOfClass(part));
    for (const { slug } of library.classes) yield () => make((part) => part === `classes/${slug}`);
    yield () => this.#copyFonts(library);
  }

  #copyFonts({ key, fonts }: Library): void {
    if (this.#placing.stands(FONTS, key)) return;
    copyFonts(this.#place.base, this.#place.output, fonts);
    retireWorker(this.#place.output);
    this.#placing.note({ part: FONTS, key, files: [] });
  }

  async #makeScripts(): Promise<void> {
    await makeScripts(this.#reader.store, this.library!, this.#site());
  }

  /** Whether a part is of a kit or a class that is still there and cannot be made: its last good state stays. */
  #isLeftOut(part: string): boolean {
    const [, of, slug] = /^(kits|classes)\/([^ /]+)/.exec(part) ?? [];
    if (of === undefined || slug === undefined) return false;
    const { kits, classes } = this.library!;
    const isMade = (of === "kits" ? kits : classes).some((one) => one.slug === slug);
    return !isMade && existsSync(join(this.#place.base, contentPath(`${of}/${slug}/index.md`)));
  }

  #site(): Site {
    const { hasGuide, hasFeed } = this.library!;
    const surroundings = { hasGuide, hasFeed, isServed: true };
    return { placing: this.#placing, aside: this.#place.aside, surroundings };
  }

  #show(show: Follower["show"]): void {
    const changed = this.#placing.takeChanged();
    const { messages, photoMessages } = this.library!;
    const told = JSON.stringify([messages, photoMessages]);
    if (!this.#isShown || told !== this.#told || changed.some((path) => SHOWN.test(path))) show();
    this.#isShown = true;
    this.#told = told;
  }
}
