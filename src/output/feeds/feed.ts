import type { Kit, Version } from "../../core/kit/kit.ts";
import type { SiteSettings } from "../../core/site-settings.ts";
import * as say from "../../words/messages.ts";
import { element } from "../xml.ts";

/** Where the feed stands below the site. */
export const FEED = "feed.xml";

interface Entry extends Version {
  readonly kit: Kit;
}

/** Whether the site has a feed: it needs an address, and a version with a date in one kit at least. */
export function hasFeed({ url }: SiteSettings, kits: readonly Kit[]): boolean {
  return url !== undefined && kits.some(({ versions }) => versions.length > 0);
}

/**
 * The Atom feed (RFC 4287) of all versions that kits state, newest first. Dates are the stated days at midnight UTC; a kit
 * that states no version is not in it. Ids are made from `feedId`, or else the site's address, and the version's name.
 */
export function feed(settings: SiteSettings & { readonly url: string }, kits: readonly Kit[]): string {
  const { url, title, summary, language, author, feedId = url } = settings;
  const entries = kits.flatMap((kit) => kit.versions.map((version): Entry => ({ kit, ...version })));
  // Stable: on one day kits stand as in the catalogue, and a kit's versions newest first.
  const sorted = entries.toSorted((a, b) => (a.date === b.date ? 0 : a.date < b.date ? 1 : -1));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${language}">`,
    `  ${element("id", feedId)}`,
    `  ${element("title", title)}`,
    `  ${element("subtitle", summary)}`,
    `  ${element("updated", midnight(sorted[0]!.date))}`,
    `  ${element("link", "", { rel: "self", type: "application/atom+xml", href: url + FEED })}`,
    `  ${element("link", "", { rel: "alternate", type: "text/html", href: url })}`,
    `  <author>${element("name", author?.name ?? title)}${author?.url ? element("uri", author.url) : ""}</author>`,
    `  ${element("icon", `${url}assets/icons/mark-192.png`)}`,
    `  ${element("generator", "Leaflight")}`,
    ...sorted.map((entry) => writeEntry(entry, url, feedId)),
    "</feed>\n",
  ].join("\n");
}

function writeEntry({ kit, version, date, note }: Entry, url: string, feedId: string): string {
  const path = `kits/${kit.slug}/`;
  return [
    "  <entry>",
    `    ${element("id", `${feedId}${path}#version-${version}`)}`,
    `    ${element("title", say.feedEntry({ title: kit.title, version }))}`,
    `    ${element("updated", midnight(date))}`,
    `    ${element("published", midnight(date))}`,
    `    ${element("link", "", { rel: "alternate", type: "text/html", href: `${url}${path}` })}`,
    `    ${element("summary", note === undefined ? kit.summary : `${note} ${kit.summary}`)}`,
    ...(kit.licence ? [`    ${element("rights", say.feedLicence({ licence: kit.licence.name }))}`] : []),
    ...(kit.licence?.url ? [`    ${element("link", "", { rel: "license", href: kit.licence.url })}`] : []),
    "  </entry>",
  ].join("\n");
}

function midnight(date: string): string {
  return `${date}T00:00:00Z`;
}
