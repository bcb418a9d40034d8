import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { SiteSettings } from "../../core/site-settings.ts";
import { settingsFile, URL_VARIABLE } from "../../input/settings/settings.ts";
import { FEED, feed, hasFeed } from "../../output/feeds/feed.ts";
import { sitemap } from "../../output/feeds/sitemap.ts";
import * as say from "../../words/messages.ts";
import type { PageSource } from "../library/page-source.ts";

/** Writes what says where the site's pages stand: site map and feed. Without an address there is neither. */
export function writeSiteFiles(
  output: string,
  { kits: entries, classes, guide, settings }: Pick<PageSource, "kits" | "classes" | "guide" | "settings">,
): void {
  const { url } = settings;
  if (url === undefined) return;
  const kits = entries.map(({ card }) => card.kit);
  const slugs = classes.map(({ slug }) => slug);
  writeFileSync(
    join(output, "sitemap.xml"),
    sitemap(
      url,
      kits,
      slugs,
      guide.map(({ name }) => name),
    ),
  );
  const fed = { kits, classes: classes.map(({ card }) => card.plan) };
  if (hasFeed(settings, fed)) writeFileSync(join(output, FEED), feed({ ...settings, url }, fed));
}

/** What a build leaves out because of its settings, in a sentence; or nothing. */
export function leftOut(settings: SiteSettings): string | undefined {
  return settings.url === undefined ? say.checkNoAddress({ file: settingsFile(), variable: URL_VARIABLE }) : undefined;
}
