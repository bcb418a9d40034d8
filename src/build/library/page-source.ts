import type { GuidePage } from "../../core/guide/guide-page.ts";
import type { Story } from "../../core/story/story.ts";
import type { Catalogue } from "../../input/catalogue/read-catalogue.ts";
import type { AnyPrintedKit } from "../../output/views/any-kit-view.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import type { ClassEntry } from "./class-entry.ts";
import type { KitEntry } from "./kit-entry.ts";
import type { SiteFacts } from "./site-facts.ts";

/** Which pages a run of Eleventy makes. */
export interface WantedPages {
  /** Names of kits and classes whose own pages are made. */
  readonly kits: readonly string[];
  /** Names of kits whose pages for their authors are made. */
  readonly authored: readonly string[];
  readonly classes: readonly string[];
  readonly guide: boolean;
  /** The pages that are of no kit, class or guide alone. */
  readonly site: boolean;
  /** The list of pages for authors. */
  readonly authors: boolean;
}

export const NO_PAGES: WantedPages = {
  kits: [],
  authored: [],
  classes: [],
  guide: false,
  site: false,
  authors: false,
};

/** What the site has beside a part of it, as far as the part's pages show it. */
export interface Surroundings {
  readonly hasGuide: boolean;
  readonly hasFeed: boolean;
  /** Whether the pages are served to their author, and not published. */
  readonly isServed: boolean;
}

/** What pages are made from. */
export interface PageSource extends SiteFacts, Surroundings {
  readonly wanted: WantedPages;
  readonly catalogue: Catalogue;
  /** The guide in its order. */
  readonly guide: readonly GuidePage[];
  /** In the order of the catalogue; where kits' own pages are made alone, at least those kits. */
  readonly kits: readonly KitEntry[];
  /** Whether there are kits beside them that are not worked out yet. */
  readonly hasWaiting: boolean;
  readonly classes: readonly ClassEntry[];
  readonly view: (slug: string) => AnyPrintedKit;
  readonly classView: (slug: string) => ClassView;
  /** How many things in a kit's picture its author should look at. */
  readonly troubles: (slug: string) => number;
  readonly guidePage: (name: string) => GuidePage;
  /** What is told on the page at an address below the site: `/kits/moon/`. */
  readonly story: (page: string) => Story;
}

let current: PageSource | undefined;

/** From now on Eleventy's pages are made from this; its registration and data know nothing of who runs it. */
export function holdSource(source: PageSource): void {
  current = source;
}

/** @throws Error where none is held yet */
export function heldSource(): PageSource {
  if (!current) throw new Error("no pages are wanted yet");
  return current;
}
