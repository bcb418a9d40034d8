import { writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Kit } from "../../core/kit/kit.ts";
import { SETTINGS_FILE, type SiteSettings, URL_VARIABLE } from "../../input/settings/settings.ts";
import { FEED, feed, hasFeed } from "../../output/feeds/feed.ts";
import { sitemap } from "../../output/feeds/sitemap.ts";

/** Writes what says where the site's pages stand: site map and feed. Without an address there is neither. */
export function writeSiteFiles(
  output: string,
  kits: readonly Kit[],
  classes: readonly string[],
  settings: SiteSettings,
): void {
  const { url } = settings;
  if (url === undefined) return;
  writeFileSync(join(output, "sitemap.xml"), sitemap(url, kits, classes));
  if (hasFeed(settings, kits)) writeFileSync(join(output, FEED), feed({ ...settings, url }, kits));
}

/** What a build leaves out because of its settings, in a sentence; or nothing. */
export function leftOut(settings: SiteSettings): string | undefined {
  return settings.url === undefined
    ? `No url in ${SETTINGS_FILE} or ${URL_VARIABLE}: left out site map, feed, canonical addresses, link previews and the page for missing addresses.`
    : undefined;
}
