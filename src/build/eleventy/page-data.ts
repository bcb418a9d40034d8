import type { SiteSettings } from "../../core/site-settings.ts";
import { PRIVATE } from "../../output/private-folder.ts";
import type { ClassEntry } from "../library/class-entry.ts";
import { heldSource } from "../library/page-source.ts";
import { NOT_FOUND } from "./relative-url.ts";

/** What Eleventy's data files give to frames and pages: each list is the pages of one kind, by what they are about. */

export function siteData(): SiteSettings {
  return heldSource().settings;
}

/** Names of kits, classes, seats and pages of the guide. */
export interface LibraryData {
  readonly kits: readonly string[];
  readonly classes: readonly string[];
  /** Those that have papers: all that are not closed. */
  readonly open: readonly string[];
  /** Each by its class and its number: `winter-evenings/3`. */
  readonly seats: readonly string[];
  /** Those whose book fits. */
  readonly fitting: readonly string[];
  readonly guide: readonly string[];
  /** Kits with a page for their authors, which are there only while the site is served; and the list of them. */
  readonly authored: readonly string[];
  readonly authors: readonly string[];
  /** The guide's contents, where there is a guide. */
  readonly contents: readonly string[];
  /** The page of what is for teachers alone, where there are open classes. */
  readonly papers: readonly string[];
  /** The page for missing addresses, where the site has an address. */
  readonly missing: readonly string[];
  /** What there is one of in a site. */
  readonly site: readonly string[];
}

/** Names of what pages are wanted of. */
export function libraryData(): LibraryData {
  const { wanted, classes, guide, settings, isServed } = heldSource();
  const own = classes.filter(({ slug }) => wanted.classes.includes(slug));
  const isOpen = ({ card }: ClassEntry): boolean => card.plan.state !== "closed";
  const keys = ({ slug }: ClassEntry, seats: readonly number[]): string[] => seats.map((seat) => `${slug}/${seat}`);
  return {
    kits: wanted.kits,
    classes: wanted.classes,
    open: own.filter(isOpen).map(({ slug }) => slug),
    seats: own.flatMap((one) => keys(one, one.card.seats)),
    fitting: own.flatMap((one) => keys(one, one.card.fitting)),
    guide: wanted.guide ? guide.map(({ name }) => name) : [],
    authored: isServed ? wanted.authored : [],
    authors: isServed && wanted.authors ? ["author"] : [],
    contents: wanted.guide && guide.length > 0 ? ["guide"] : [],
    papers: wanted.site && classes.some(isOpen) ? [PRIVATE] : [],
    missing: wanted.site && settings.url !== undefined ? [NOT_FOUND] : [],
    site: wanted.site ? ["site"] : [],
  };
}
