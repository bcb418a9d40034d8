import { readFileSync } from "node:fs";
import { join } from "node:path";
import bundlePlugin from "@11ty/eleventy-plugin-bundle";
import MarkdownIt from "markdown-it";
import { KitError } from "../../input/files/message.ts";
import { basePath } from "../../input/settings/settings.ts";
import { dataBlock, howTo } from "../../output/feeds/how-to.ts";
import { benchPart } from "../../output/parts/bench.ts";
import { type FinderPlace, finderPart } from "../../output/parts/finder.ts";
import * as messages from "../../words/messages.ts";
import { bundlePageScripts } from "../bundle/page-scripts.ts";
import { bundleScripts } from "../bundle/scripts.ts";
import { publishClasses } from "../files/publish-classes.ts";
import { publishFiles } from "../files/publish-files.ts";
import { writeSiteFiles } from "../files/site-files.ts";
import { type Library, openLibrary } from "../library.ts";
import { retireWorker, writeInstallable } from "../offline/write-offline.ts";
import { printPackets } from "../print/print-packets.ts";
import { pageHead } from "./page-head.ts";
import { registerClasses } from "./register-classes.ts";
import { linkFrom, NOT_FOUND } from "./relative-url.ts";

/** The parts of Eleventy's configuration that the site uses. */
export interface SiteConfig {
  addPlugin(plugin: unknown): void;
  setLibrary(name: string, library: unknown): void;
  addNunjucksGlobal(name: string, value: unknown): void;
  addFilter(name: string, filter: (...args: never[]) => unknown): void;
  addTransform(name: string, transform: (this: { page: { url: string | false } }, content: string) => string): void;
  addGlobalData(name: string, data: unknown): void;
  addTemplate(path: string, content: string, data: Record<string, unknown>): void;
  addPassthroughCopy(paths: Record<string, string>): void;
  addWatchTarget(path: string): void;
  on(event: string, handler: (event: never) => unknown): void;
}

const FONTS = "node_modules/@fontsource";
const BASE = process.cwd();

/** Registers kits, pages and files with Eleventy. While serving, patterns and packets follow each change; src/build/build.ts does it for a build. */
export function registerSite(config: SiteConfig): void {
  let library: Library | undefined;
  const opened = (): Library => {
    library ??= openLibrary(BASE);
    return library;
  };
  const kits = () => opened().views.map(({ kit }) => kit);
  let serving = false;
  // While serving, the site stands at the root, whatever its address will be.
  const root = (): string => (serving ? "/" : basePath(opened().settings.url ?? "http://host/"));
  config.addPlugin(bundlePlugin);
  config.setLibrary("md", new MarkdownIt({ typographer: true }));
  // A misspelt message in a layout calls what is not there, and so stops the build.
  config.addNunjucksGlobal("words", messages);
  config.addFilter("kitView", (slug: string) => opened().view(slug));
  config.addFilter("rel", (target: string, pageUrl: string) => linkFrom(pageUrl, target, root()));
  config.addFilter("pageHead", (page: string, title: string, summary?: string) =>
    pageHead(opened(), page, title, summary),
  );
  config.addFilter("benchPart", (kit: { readonly title: string }) => String(benchPart(kit)));
  config.addFilter("finderPart", (place: FinderPlace) => String(finderPart(place)));
  config.addFilter("howTo", (slug: string) => dataBlock(howTo(opened().view(slug), opened().settings)));
  config.addGlobalData("site", () => opened().settings);
  config.addGlobalData("missingPages", () => (opened().settings.url === undefined ? [] : [NOT_FOUND]));
  config.addTransform("relative bundles", function (content) {
    const { url } = this.page;
    return url === false
      ? content
      : content.replace(
          /(href|src)="(\/bundle\/[^"]+)"/g,
          (_, name: string, target: string) => `${name}="${linkFrom(url, target, root())}"`,
        );
  });
  config.addGlobalData("kitSlugs", () => opened().views.map((view) => view.slug));
  config.addTemplate("packet.njk", ofKit("packet"), paged("packet", "kits/{{ slug }}/packet/index.html"));
  config.addTemplate("large.njk", ofKit("large"), paged("large", "kits/{{ slug }}/packet/large.html"));
  config.addTemplate("bench.njk", "", {
    ...paged("bench", "kits/{{ slug }}/bench/index.html"),
    layout: "bench.njk",
  });
  config.addTemplate("offline.njk", template("offline"), {
    layout: "base.njk",
    title: "Not on this device",
    permalink: "offline.html",
    eleventyExcludeFromCollections: true,
  });
  registerClasses(config, () => opened().classes);
  config.addTemplate("404.njk", template("404"), {
    layout: "base.njk",
    title: "Not on the shelf",
    permalink: "{{ missing }}",
    pagination: { data: "missingPages", size: 1, alias: "missing" },
    eleventyExcludeFromCollections: true,
  });
  config.addPassthroughCopy({
    [`${FONTS}-variable/literata/files/literata-latin-wght-normal.woff2`]: "assets/fonts/literata.woff2",
    [`${FONTS}-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2`]: "assets/fonts/source-sans-3.woff2",
    [`${FONTS}-variable/source-sans-3/files/source-sans-3-latin-ext-wght-normal.woff2`]:
      "assets/fonts/source-sans-3-ext.woff2",
    ...Object.fromEntries(
      [400, 600, 700].map((weight) => [
        `${FONTS}/source-sans-3/files/source-sans-3-latin-${weight}-normal.woff2`,
        `assets/fonts/source-sans-3-${weight}.woff2`,
      ]),
    ),
    [`${FONTS}/literata/files/literata-latin-600-normal.woff2`]: "assets/fonts/literata-600.woff2",
  });
  for (const path of ["layouts", "src", "content"]) config.addWatchTarget(path);
  config.on("eleventy.before", ({ runMode }: { runMode: string }) => {
    serving = runMode !== "build";
    try {
      library = openLibrary(BASE);
    } catch (error) {
      if (runMode === "build" || library === undefined || !(error instanceof KitError)) throw error;
      console.error(`${error.message}\nThe last good pages stay.`);
    }
  });
  config.on(
    "eleventy.after",
    async ({ directories, runMode }: { directories: { output: string }; runMode: string }) => {
      if (runMode === "build") return;
      await bundlePageScripts(BASE, directories.output, opened());
      await publishFiles(join(BASE, "content"), directories.output, opened().views);
      publishClasses(directories.output, opened().classes);
      writeSiteFiles(
        directories.output,
        kits(),
        opened().classes.map(({ slug }) => slug),
        opened().settings,
      );
      await bundleScripts(directories.output, opened());
      await printPackets(directories.output, opened().views, opened().classes);
      await writeInstallable(directories.output, opened().settings);
      retireWorker(directories.output);
    },
  );
}

/** A page of one kit: its view under the name that the page's script gives it, too. */
function ofKit(name: string): string {
  return `{% set view = slug | kitView %}{% include "pages/${name}.njk" %}`;
}

function template(name: string): string {
  return readFileSync(join(BASE, `layouts/pages/${name}.njk`), "utf8");
}

function paged(name: string, permalink: string): Record<string, unknown> {
  return {
    layout: "packet.njk",
    template: name,
    permalink,
    pagination: { data: "kitSlugs", size: 1, alias: "slug" },
    eleventyExcludeFromCollections: true,
  };
}
