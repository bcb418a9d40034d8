import { FEED } from "../../output/feeds/feed.ts";
import { SOCIAL } from "../../output/feeds/social-size.ts";
import type { LinkTo } from "../../output/parts/cards.ts";
import type { PageHead } from "../../output/parts/head.ts";
import * as say from "../../words/messages.ts";
import type { PageSource } from "../library/page-source.ts";
import { NOT_FOUND } from "./relative-url.ts";

const STAND_INS: readonly string[] = [NOT_FOUND, "/offline.html"];

/** A seat's pages are for those who sit there, private ones for teachers, an author's for the author. */
const OF_FEW = /^\/(classes\/[^/]+\/seat-\d+|private|author)\//;

/** `page` is the page's address below the site, `/kits/harbour-moon/`; title and summary are its own; `link` leads from it to others. */
export function pageHead(
  library: PageSource,
  page: string,
  { title, summary, link }: { title: string; summary: string | undefined; link: LinkTo },
): PageHead {
  const { settings } = library;
  const indexed = !STAND_INS.includes(page) && !OF_FEW.test(page);
  const canonical = settings.url === undefined || !indexed ? undefined : settings.url + page.slice(1);
  return {
    summary: summary ?? settings.summary,
    indexed,
    canonical,
    feed: feedOf(library, link),
    preview: canonical === undefined ? [] : previewOf(library, page, { canonical, title, summary }),
  };
}

/** The feed as a page links to it; undefined where the site has none. */
export function feedOf({ settings, hasFeed }: PageSource, link: LinkTo): PageHead["feed"] {
  return hasFeed ? { address: link(`/${FEED}`), site: settings.title } : undefined;
}

function previewOf(
  { settings, kits }: PageSource,
  page: string,
  { canonical, title, summary }: { canonical: string; title: string; summary: string | undefined },
): PageHead["preview"] {
  const kit = kits.find(({ slug }) => page.startsWith(`/kits/${slug}/`))?.card;
  const shown = kit ?? kits[0]?.card;
  const property = (name: string, content: string | number) => ({ property: `og:${name}`, content });
  return [
    property("type", kit ? "article" : "website"),
    property("site_name", settings.title),
    property("title", title),
    property("description", summary ?? kit?.kit.summary ?? settings.summary),
    property("url", canonical),
    ...(shown
      ? [
          property("image", `${settings.url}kits/${shown.slug}/social.jpg`),
          property("image:type", "image/jpeg"),
          property("image:width", SOCIAL.width),
          property("image:height", SOCIAL.height),
          property("image:alt", say.sitePreviewPicture({ title: shown.kit.title })),
        ]
      : []),
  ];
}
