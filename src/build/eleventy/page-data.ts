import type { SiteSettings } from "../../core/site-settings.ts";
import { PRIVATE } from "../../output/private-folder.ts";
import { currentLibrary } from "../library/current-library.ts";
import { NOT_FOUND } from "./relative-url.ts";

/** What Eleventy's data files give to frames and pages: each list is the pages of one kind, by what they are about. */

export function siteData(): SiteSettings {
  return currentLibrary().settings;
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
}

export function libraryData(): LibraryData {
  const { views, classes, guide, settings } = currentLibrary();
  const open = classes.filter(({ plan }) => plan.state !== "closed");
  const seats = classes.flatMap((one) => one.seats);
  return {
    kits: views.map(({ slug }) => slug),
    classes: classes.map(({ slug }) => slug),
    open: open.map(({ slug }) => slug),
    seats: seats.map(({ key }) => key),
    fitting: seats.filter(({ view }) => view).map(({ key }) => key),
    guide: guide.map(({ name }) => name),
    authored: isServing() ? views.map(({ slug }) => slug) : [],
    authors: isServing() ? ["author"] : [],
    contents: guide.length === 0 ? [] : ["guide"],
    papers: open.length === 0 ? [] : [PRIVATE],
    missing: settings.url === undefined ? [] : [NOT_FOUND],
  };
}

/** Eleventy tells its run mode in this variable before it asks for data: build, watch or serve. */
function isServing(): boolean {
  return ["watch", "serve"].includes(process.env["ELEVENTY_RUN_MODE"] ?? "build");
}
