import { readFileSync } from "node:fs";
import { join } from "node:path";
import nunjucks from "nunjucks";
import { afterAll, describe, expect, it } from "vitest";
import { siteData } from "../../../src/build/eleventy/page-data.ts";
import { registerSite } from "../../../src/build/eleventy/register.ts";
import type { SiteConfig } from "../../../src/build/eleventy/site-config.ts";
import { holdSource, NO_PAGES } from "../../../src/build/library/page-source.ts";
import { openedLibrary } from "../library/opened-library.ts";

const LAYOUTS = join(import.meta.dirname, "../../../layouts");

/** What Eleventy gives each frame's pages; a name that is left out is none of theirs. */
const CONTEXTS: Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>> = {
  "base.njk": [{ page: at("/offline.html"), title: "Title", summary: "About it", content: "<p>Content</p>" }],
  "author.njk": [{ content: "<p>Content</p>" }],
  "guide.njk": [{ content: "<p>Content</p>" }],
  "catalogue.njk": [{ page: at("/") }],
  "kit.njk": [{ page: at("/kits/little-gull/"), slug: "little-gull" }],
  "packet.njk": [
    { page: at("/kits/little-gull/packet/"), slug: "little-gull", template: "packet" },
    { page: at("/classes/winter-evenings/seat-1/packet/"), seat: "winter-evenings/1", template: "packet" },
  ],
  "class.njk": [{ page: at("/classes/winter-evenings/"), slug: "winter-evenings" }],
  "seat.njk": [{ seat: "winter-evenings/1" }, { seat: "winter-evenings/6" }],
  "class-print.njk": [
    { page: at("/private/classes/winter-evenings/teacher/"), slug: "winter-evenings", template: "teacher" },
    { page: at("/classes/winter-evenings/measuring-card/"), slug: "winter-evenings", template: "measuring-card" },
  ],
};

/** Pages may have none: then the site's own stands in. */
const OPTIONAL = ["summary"];

function at(url: string): { readonly url: string } {
  return { url };
}

/** Frames as Eleventy renders them: with the options, filters and globals that the site registers. */
function environment(): nunjucks.Environment {
  const filters = new Map<string, (...args: never[]) => unknown>();
  const globals = new Map<string, unknown>();
  let options = {};
  const config: Partial<SiteConfig> = {
    addFilter: (name, filter) => filters.set(name, filter),
    addNunjucksGlobal: (name, value) => globals.set(name, value),
    setNunjucksEnvironmentOptions: (given) => {
      options = given;
    },
  };
  const { library } = opened;
  const wanted = { ...NO_PAGES, guide: true, site: true };
  holdSource({ ...library, wanted, isServed: false, troubles: () => 0 });
  registerSite(new Proxy(config as SiteConfig, { get: (own, name) => Reflect.get(own, name) ?? (() => {}) }));
  const loader = new nunjucks.FileSystemLoader(LAYOUTS);
  const made = new nunjucks.Environment(loader, { autoescape: true, ...options });
  for (const [name, filter] of filters) made.addFilter(name, filter as (...args: unknown[]) => unknown);
  for (const [name, value] of globals) made.addGlobal(name, value);
  made.addGlobal("site", siteData());
  return made;
}

/** A frame without its front matter, and without bundles, which are Eleventy's. */
function frame(name: string): string {
  return readFileSync(join(LAYOUTS, name), "utf8")
    .replace(/^---[\s\S]*?---\n/, "")
    .replace(/\{%-? (css|js)\b[^%]*%\}[\s\S]*?\{% end\1 %\}/g, "")
    .replace(/\{% getBundleFileUrl [^%]*%\}/g, "/bundle/x");
}

/** The same frame with one name misspelt, once for each name in it. */
function misspelt(text: string): { readonly name: string; readonly text: string }[] {
  return [...text.matchAll(/\{\{.*?\}\}|\{% set .*?%\}/g)].flatMap((tag) =>
    [...tag[0].matchAll(/"[^"]*"|[A-Za-z]\w*(?!\w| =|:)/g)]
      .filter(([word]) => !word.startsWith('"') && !["set", "endset", "safe", ...OPTIONAL].includes(word))
      .map((word) => {
        const end = tag.index + word.index + word[0].length;
        return { name: word[0], text: `${text.slice(0, end)}x${text.slice(end)}` };
      }),
  );
}

const opened = await openedLibrary(join(LAYOUTS, ".."));
afterAll(() => opened.close());
const engine = environment();

describe("page frames", () => {
  const outcomes = (name: string, text: string): (string | Error)[] =>
    CONTEXTS[name]!.map((context) => {
      try {
        return engine.renderString(text, { ...context });
      } catch (error) {
        return error as Error;
      }
    });

  it.each(Object.keys(CONTEXTS))("%s is filled", (name) => {
    for (const outcome of outcomes(name, frame(name))) {
      expect(outcome).toBeTypeOf("string");
      expect(outcome).not.toMatch(/undefined|\[object/);
    }
  });

  it.each(Object.keys(CONTEXTS).flatMap((name) => misspelt(frame(name)).map((wrong) => ({ frame: name, ...wrong }))))(
    "$frame stops where $name is misspelt",
    ({ frame: name, text }) => {
      expect(outcomes(name, text).some((outcome) => outcome instanceof Error)).toBe(true);
    },
  );
});
