import { existsSync } from "node:fs";
import { join } from "node:path";
import { contentPath } from "../../input/files/content-folder.ts";
import * as say from "../../words/messages.ts";
import { makeScripts } from "../bundle/make-scripts.ts";
import { coverPath } from "../desk/cover.ts";
import { copyFonts } from "../fonts/copy-fonts.ts";
import type { Site } from "../kits/kit-crew.ts";
import type { KitStageName } from "../kits/kit-stages.ts";
import type { KitEntry } from "../library/kit-entry.ts";
import type { Library } from "../library/library.ts";
import { retireWorker } from "../offline/write-offline.ts";
import { makeRest } from "../rest/make-rest.ts";
import { Placing } from "../store/placing.ts";
import { makeableStages } from "./makeable-stages.ts";
import { SiteReader } from "./site-reader.ts";
import { type Visited, Visits } from "./visits.ts";

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
  /** Called with an error that keeps something from being made. */
  readonly failed: (error: unknown) => void;
  /** Called with the site when it was read again, or covers of its kits are others. */
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

/** What the desk shows of the site itself. */
const COVERS = new RegExp(`^${coverPath("[^/]+")}$`);

/** What is copied once for all that parts share. */
const FONTS = "fonts";

/** After so many kits it is looked whether something changed meanwhile, or a page was asked for. */
const AT_ONCE = 8;

/** So few are read first, without threads that would have to be started, so that the catalogue soon has some. */
const AT_FIRST = 2;

/** Makes a site in the folder that it is served from, turn by turn: each makes what changed, and the pages of kits that changed first. */
export class SiteMaker {
  readonly #place: ServedPlace;
  readonly #reader: SiteReader;
  readonly #placing: Placing;
  readonly #visits = new Visits();
  #isShown = false;
  /** The messages that pages show. */
  #told = "";

  constructor(place: ServedPlace) {
    this.#place = place;
    this.#reader = new SiteReader(place.base);
    this.#placing = new Placing(place.output);
  }

  /** Makes first what stands at a path below the site; settles when it is made, or cannot be. Whoever calls this sees to it that `serveVisits` is called. */
  visit(path: string): Promise<void> {
    return this.#visits.add(path);
  }

  /** Names of the contents of what stands in the site, by paths below it. */
  get names(): ReadonlyMap<string, string> {
    return this.#placing.names;
  }

  /** Whether something is asked for that is not made yet. */
  get isVisited(): boolean {
    return this.#visits.isWaiting;
  }

  /** Nothing is made any more: nobody waits for it. */
  dropVisits(): void {
    this.#visits.take().settle();
  }

  /** Makes what was asked for. */
  async serveVisits({ read, failed }: Pick<Follower, "read" | "failed">): Promise<void> {
    while (this.library && this.#visits.isWaiting) {
      const visits = this.#visits.take();
      try {
        await this.#makeVisited(visits, read);
      } catch (error) {
        failed(error);
      }
      visits.settle();
    }
  }

  /** The site as it was read last; undefined before the first turn. */
  get library(): Library | undefined {
    return this.#reader.library;
  }

  /**
   * Makes what changed; `kits` are names of those in whose folders something did. What cannot be made is told, and stops nothing else.
   * @returns whether the site is whole: nothing failed, and nothing was left to the next turn @throws Error where nothing could be read yet
   */
  async turn(kits: readonly string[], follower: Follower): Promise<boolean> {
    const { hasNews } = follower;
    let isWhole = true;
    for (const step of this.#isShown ? this.#laterTurn(kits, follower) : this.#firstTurn(follower)) {
      await this.serveVisits(follower);
      try {
        await step();
      } catch (error) {
        if (!this.library) throw error;
        follower.failed(error);
        isWhole = false;
      }
      if (this.#isShown && hasNews()) return false;
    }
    // What failed was not asked for, and would be taken away.
    if (isWhole) {
      this.#placing.keep((part) => this.#isLeftOut(part));
      this.#placing.sweep();
    }
    this.#show(follower);
    await this.#reader.rest();
    return isWhole;
  }

  /** What is needed to look around, before all else: kits that are not known yet follow, and those first that are asked for. */
  *#firstTurn({ show, read }: Follower): Generator<Step> {
    yield () => this.#reader.open();
    yield () => read(this.library!);
    yield () => this.#makeRest((part) => part === "site");
    yield () => this.#copyFonts(this.library!);
    yield () => this.#show({ show, read });
    yield* this.#wholeSteps({ show, read });
  }

  /** All that the site has, what is looked at before what may wait. */
  *#wholeSteps({ show, read }: Pick<Follower, "show" | "read">): Generator<Step> {
    yield* this.#waitingSteps({ show, read });
    yield* this.#kitSteps(FIRST);
    yield* this.#otherSteps();
    yield () => this.#show({ show, read });
    yield* this.#kitSteps(LATER);
    yield () => this.#makeScripts();
  }

  /** Reads kits that wait, some at once, and makes their pages; the catalogue is made again, before these, when it has twice as many. */
  *#waitingSteps({ show, read }: Pick<Follower, "show" | "read">): Generator<Step> {
    const tried = new Set<string>();
    const count = this.library!.waiting.kits.size;
    if (count > 0) console.log(say.servingWaiting({ count }));
    let shown = this.library!.kits.length;
    for (;;) {
      const most = tried.size === 0 ? AT_FIRST : AT_ONCE;
      const some = [...this.library!.waiting.kits].filter((slug) => !tried.has(slug)).slice(0, most);
      if (some.length === 0) break;
      for (const slug of some) tried.add(slug);
      yield () => this.#readKits(some, read);
      if (this.library!.kits.length >= 2 * shown) {
        shown = this.library!.kits.length;
        yield () => this.#makeRest((part) => part === "site");
        yield () => this.#show({ show, read });
        yield () => this.#makeRest((part) => part === "frame");
      }
      yield () => this.#makeKits(some, ["pages"]);
    }
    if (tried.size === 0) return;
    if (this.library!.waiting.kits.size > 0) {
      // What could not even be tried is told when all is read as usual.
      yield () => this.#reader.endBeginning();
      yield () => this.#reader.open();
      yield () => read(this.library!);
    }
    yield () => console.log(say.servingReady());
  }

  async #readKits(slugs: readonly string[], read: Follower["read"]): Promise<void> {
    await this.#reader.read(slugs);
    await this.#reader.open();
    read(this.library!);
  }

  async #makeKits(slugs: readonly string[], stages: readonly KitStageName[]): Promise<void> {
    await this.#make(
      this.library!.kits.filter(({ slug }) => slugs.includes(slug)),
      stages,
    );
  }

  async #make(kits: readonly KitEntry[], asked: readonly KitStageName[]): Promise<void> {
    for (const some of makeableStages(kits, asked, this.library!.photoMessages))
      await this.#reader.crew.make(some.kits, this.library!, this.#site(), some.stages);
  }

  async #makeVisited({ kits, classes, hasScripts }: Visited, read: Follower["read"]): Promise<void> {
    const { waiting } = this.library!;
    // A class waits for the kits that it names.
    const named = [...classes].flatMap((slug) => waiting.classes.get(slug) ?? []);
    const unread = [...new Set([...kits.keys(), ...named])].filter((slug) => waiting.kits.has(slug));
    if (unread.length > 0) await this.#readKits(unread, read);
    for (const [slug, stages] of kits) await this.#makeKits([slug], [...stages]);
    if (hasScripts) await this.#makeScripts();
    for (const slug of classes) await this.#makeRest((part) => part === `classes/${slug}`);
  }

  async #makeRest(isAsked: (part: string) => boolean): Promise<void> {
    await makeRest(this.library!, this.#site(), isAsked);
  }

  /** Pages of kits that changed, before the site is read again and all else is looked through. */
  *#laterTurn(kits: readonly string[], { show, read }: Follower): Generator<Step> {
    yield () => this.#makePages(kits);
    yield () => this.#show({ show, read });
    yield () => this.#reader.open();
    yield () => read(this.library!);
    yield* this.#wholeSteps({ show, read });
  }

  async #makePages(slugs: readonly string[]): Promise<void> {
    const kits = await this.#reader.readAgain(slugs);
    await this.#reader.crew.make(kits, this.library!, this.#site(), ["pages"]);
  }

  *#kitSteps(stages: readonly KitStageName[]): Generator<Step> {
    const { kits } = this.library!;
    for (let i = 0; i < kits.length; i += AT_ONCE) yield () => this.#make(kits.slice(i, i + AT_ONCE), stages);
  }

  *#otherSteps(): Generator<Step> {
    const library = this.library!;
    const isOfClass = (part: string): boolean => part.startsWith("classes/");
    yield () => this.#makeRest((part) => !isOfClass(part));
    for (const { slug } of library.classes) yield () => this.#makeRest((part) => part === `classes/${slug}`);
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

  #show({ show, read }: Pick<Follower, "show" | "read">): void {
    const changed = this.#placing.takeChanged();
    const { messages, photoMessages } = this.library!;
    const told = JSON.stringify([messages, photoMessages]);
    if (!this.#isShown || told !== this.#told || changed.some((path) => SHOWN.test(path))) show();
    if (changed.some((path) => COVERS.test(path))) read(this.library!);
    this.#isShown = true;
    this.#told = told;
  }
}
