import bundlePlugin from "@11ty/eleventy-plugin-bundle";
import { basePath } from "../../input/settings/settings.ts";
import * as messages from "../../words/messages.ts";
import type { Use } from "../fonts/faces.ts";
import { fontStyles } from "../fonts/font-styles.ts";
import { heldSource as opened } from "../library/page-source.ts";
import { registerAuthors } from "./register-author.ts";
import { registerClasses } from "./register-classes.ts";
import { registerParts } from "./register-parts.ts";
import { linkFrom } from "./relative-url.ts";
import type { SiteConfig } from "./site-config.ts";

/** Registers pages and what they show with Eleventy, from what the run makes pages of. */
export function registerSite(config: SiteConfig): void {
  // While serving, the site stands at the root, whatever its address will be.
  const root = (): string => (opened().isServed ? "/" : basePath(opened().settings.url ?? "http://host/"));
  // Compiled frames would be held for the next run of Eleventy in this thread, with what the last one had registered.
  config.setUseTemplateCache(false);
  // Pruning would parse every page again; no page names an empty bundle.
  config.addPlugin(bundlePlugin, { pruneEmptySelector: false });
  // A misspelt name in a layout has no value, and a misspelt message calls what is not there: both stop the build.
  config.setNunjucksEnvironmentOptions({ throwOnUndefined: true });
  config.addNunjucksGlobal("words", messages);
  config.addFilter("kitView", (slug: string) => opened().view(slug));
  config.addFilter("rel", (target: string, pageUrl: string) => linkFrom(pageUrl, target, root()));
  registerParts(config, opened, (from, target) => linkFrom(from, target, root()));
  addBundleLinks(config, root);
  addCatalogue(config);
  addKitPages(config);
  addPieces(config);
  addGlossary(config);
  addGuide(config);
  addStandIns(config);
  registerClasses(config, opened);
  registerAuthors(config, opened, (from, target) => linkFrom(from, target, root()));
  config.addFilter("fontStyles", (use: Use) => fontStyles(use, opened().fonts));
}

/** Bundles stand at the root, and every page links to them from where it is. */
function addBundleLinks(config: SiteConfig, root: () => string): void {
  config.addTransform("relative bundles", function (content) {
    const { url } = this.page;
    return url === false
      ? content
      : content.replace(
          /(href|src)="(\/bundle\/[^"]+)"/g,
          (_, name: string, target: string) => `${name}="${linkFrom(url, target, root())}"`,
        );
  });
}

function addCatalogue(config: SiteConfig): void {
  config.addTemplate("catalogue.njk", "", {
    layout: "catalogue.njk",
    eleventyComputed: {
      title: () => opened().catalogue.title,
      summary: () => opened().catalogue.summary,
    },
    ...ofSite("index.html"),
  });
}

function addKitPages(config: SiteConfig): void {
  config.addTemplate("kit.njk", "", {
    ...paged("kit", "kits/{{ slug }}/index.html"),
    layout: "kit.njk",
    eleventyComputed: {
      title: ({ slug }: { slug: string }) => opened().view(slug).kit.title,
      summary: ({ slug }: { slug: string }) => opened().view(slug).kit.summary,
    },
  });
  config.addTemplate("packet.njk", "", paged("packet", "kits/{{ slug }}/packet/index.html"));
  config.addTemplate("large.njk", "", paged("large", "kits/{{ slug }}/packet/large.html"));
  config.addTemplate("make.njk", "", {
    ...paged("make", "kits/{{ slug }}/make/index.html"),
    layout: "make.njk",
    eleventyComputed: {
      title: ({ slug }: { slug: string }) => messages.makeTitle({ title: opened().view(slug).kit.title }),
      summary: () => messages.makeLede(),
    },
  });
  config.addTemplate("bench.njk", "", {
    ...paged("bench", "kits/{{ slug }}/bench/index.html"),
    layout: "bench.njk",
  });
}

/** What a reader has under way. */
function addPieces(config: SiteConfig): void {
  config.addTemplate("pieces.njk", "", {
    layout: "pieces.njk",
    eleventyComputed: { title: () => messages.piecesTitle(), summary: () => messages.piecesSummary() },
    ...ofSite("pieces/index.html"),
  });
}

function addGlossary(config: SiteConfig): void {
  config.addTemplate("glossary.njk", "{{ page.url | glossaryPage | safe }}", {
    layout: "base.njk",
    eleventyComputed: { title: () => messages.glossaryTitle(), summary: () => messages.glossarySummary() },
    ...ofSite("glossary/index.html"),
  });
}

/** The guide's contents, and a page for each of its files. */
function addGuide(config: SiteConfig): void {
  config.addTemplate("guide.njk", "{{ page.url | guideContents | safe }}", {
    layout: "guide.njk",
    eleventyComputed: { title: () => messages.guideTitle(), summary: () => messages.guideSummary() },
    permalink: "{{ contents }}/index.html",
    pagination: { data: "library.contents", size: 1, alias: "contents" },
    eleventyExcludeFromCollections: true,
  });
  config.addTemplate("guide-page.njk", "{{ page.url | guidePage(name) | safe }}", {
    layout: "guide.njk",
    eleventyComputed: {
      title: ({ name }: { name: string }) => opened().guidePage(name).title,
      summary: ({ name }: { name: string }) => opened().guidePage(name).summary,
    },
    permalink: "guide/{{ name }}/index.html",
    pagination: { data: "library.guide", size: 1, alias: "name" },
    eleventyExcludeFromCollections: true,
  });
}

/** Pages that stand for one that is not there. */
function addStandIns(config: SiteConfig): void {
  config.addTemplate("offline.njk", "{{ page.url | absentPage | safe }}", {
    layout: "base.njk",
    eleventyComputed: { title: () => messages.siteAbsentTitle() },
    ...ofSite("offline.html"),
  });
  config.addTemplate("404.njk", "{{ page.url | missingPage | safe }}", {
    layout: "base.njk",
    eleventyComputed: { title: () => messages.siteMissingTitle() },
    permalink: "{{ missing }}",
    pagination: { data: "library.missing", size: 1, alias: "missing" },
    eleventyExcludeFromCollections: true,
  });
}

/** A page of the whole site, made where those are wanted. */
function ofSite(permalink: string): Record<string, unknown> {
  return {
    permalink,
    pagination: { data: "library.site", size: 1, alias: "site_" },
    eleventyExcludeFromCollections: true,
  };
}

function paged(name: string, permalink: string): Record<string, unknown> {
  return {
    layout: "packet.njk",
    template: name,
    permalink,
    pagination: { data: "library.kits", size: 1, alias: "slug" },
    eleventyExcludeFromCollections: true,
  };
}
