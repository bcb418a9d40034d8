import { isOver } from "../../core/class/class-state.ts";
import type { Kit, Version } from "../../core/kit/kit.ts";
import type { SiteSettings } from "../../core/site-settings.ts";
import { dayText } from "../../words/dates.ts";
import * as say from "../../words/messages.ts";
import type { ClassFacts } from "../views/class/class-card.ts";
import { element } from "../xml.ts";

/** Where the feed stands below the site. */
export const FEED = "feed.xml";

/** What a feed tells of a kit. */
export type FedKit = Pick<Kit, "slug" | "title" | "summary" | "versions" | "licence">;

/** What a feed is of. */
export interface Fed {
  readonly kits: readonly FedKit[];
  readonly classes: readonly ClassFacts[];
}

/** Something that was published on a day. */
interface Entry {
  /** ISO 8601 day. */
  readonly date: string;
  /** Page below the site, and the rest of the entry's id. */
  readonly path: string;
  readonly name: string;
  readonly title: string;
  readonly summary: string;
  readonly licence?: Kit["licence"];
}

/** Whether the site has a feed: it needs an address, and something with a day. */
export function hasFeed({ url }: SiteSettings, fed: Fed): boolean {
  return url !== undefined && entriesOf(fed).length > 0;
}

/**
 * The Atom feed (RFC 4287) of all versions that kits state, and of classes that state when they were announced and are still
 * to be held, newest first. Dates are the stated days at midnight UTC; what states none is not in it. Ids are made from
 * `feedId`, or else the site's address, and the version's name.
 */
export function feed(settings: SiteSettings & { readonly url: string }, fed: Fed): string {
  const { url, title, summary, language, author, feedId = url } = settings;
  const entries = entriesOf(fed);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${language}">`,
    `  ${element("id", feedId)}`,
    `  ${element("title", title)}`,
    `  ${element("subtitle", summary)}`,
    `  ${element("updated", midnight(entries[0]!.date))}`,
    `  ${element("link", "", { rel: "self", type: "application/atom+xml", href: url + FEED })}`,
    `  ${element("link", "", { rel: "alternate", type: "text/html", href: url })}`,
    `  <author>${element("name", author?.name ?? title)}${author?.url ? element("uri", author.url) : ""}</author>`,
    `  ${element("icon", `${url}assets/icons/mark-192.png`)}`,
    `  ${element("generator", "Leaflight")}`,
    ...entries.map((entry) => writeEntry(entry, url, feedId)),
    "</feed>\n",
  ].join("\n");
}

/** Newest first; on one day classes, then kits as in the catalogue, and a kit's versions newest first. */
function entriesOf({ kits, classes }: Fed): Entry[] {
  const all = [...classes.flatMap(classEntry), ...kits.flatMap((kit) => kit.versions.map((one) => kitEntry(kit, one)))];
  return all.toSorted((a, b) => (a.date === b.date ? 0 : a.date < b.date ? 1 : -1));
}

function classEntry({ slug, title, summary, announced, date, place, state }: ClassFacts): Entry[] {
  if (announced === undefined || isOver(state)) return [];
  const when = say.feedClass({ date: dayText(date), place });
  return [
    {
      date: announced,
      path: `classes/${slug}/`,
      name: "",
      title,
      summary: summary === "" ? when : `${when} ${summary}`,
    },
  ];
}

function kitEntry({ slug, title, summary, licence }: FedKit, { version, date, note }: Version): Entry {
  return {
    date,
    path: `kits/${slug}/`,
    name: `#version-${version}`,
    title: say.feedEntry({ title, version }),
    summary: note === undefined ? summary : `${note} ${summary}`,
    licence,
  };
}

function writeEntry({ date, path, name, title, summary, licence }: Entry, url: string, feedId: string): string {
  return [
    "  <entry>",
    `    ${element("id", `${feedId}${path}${name}`)}`,
    `    ${element("title", title)}`,
    `    ${element("updated", midnight(date))}`,
    `    ${element("published", midnight(date))}`,
    `    ${element("link", "", { rel: "alternate", type: "text/html", href: `${url}${path}` })}`,
    `    ${element("summary", summary)}`,
    ...(licence ? [`    ${element("rights", say.feedLicence({ licence: licence.name }))}`] : []),
    ...(licence?.url ? [`    ${element("link", "", { rel: "license", href: licence.url })}`] : []),
    "  </entry>",
  ].join("\n");
}

function midnight(date: string): string {
  return `${date}T00:00:00Z`;
}
