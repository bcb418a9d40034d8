import { hasFeed } from "../../output/feeds/feed.ts";
import { SOCIAL } from "../../output/feeds/social-size.ts";
import type { Library } from "../library.ts";
import { NOT_FOUND } from "./relative-url.ts";

/** What a page's head says about the page to those who link to it. */
export interface PageHead {
  /** False on pages that stand for others or are for a class: they are not to be found by a search. */
  readonly indexed: boolean;
  /** The page's one address; undefined where the site states none. */
  readonly canonical: string | undefined;
  readonly hasFeed: boolean;
  /** How a link to it is shown elsewhere: properties of the Open Graph protocol (ogp.me) in order. */
  readonly preview: readonly { readonly property: string; readonly content: string | number }[];
}

const STAND_INS: readonly string[] = [NOT_FOUND, "/offline.html"];

/** A seat's pages are for those who sit there. */
const OF_SEATS = /^\/classes\/[^/]+\/(seat-\d+|teacher)\//;

/** `page` is the page's address below the site, `/kits/harbour-moon/`; title and summary are its own. */
export function pageHead(library: Library, page: string, title: string, summary: string | undefined): PageHead {
  const { settings, views } = library;
  const indexed = !STAND_INS.includes(page) && !OF_SEATS.test(page);
  const canonical = settings.url === undefined || !indexed ? undefined : settings.url + page.slice(1);
  return {
    indexed,
    canonical,
    hasFeed: hasFeed(
      settings,
      views.map(({ kit }) => kit),
    ),
    preview: canonical === undefined ? [] : previewOf(library, page, { canonical, title, summary }),
  };
}

function previewOf(
  { settings, views }: Library,
  page: string,
  { canonical, title, summary }: { canonical: string; title: string; summary: string | undefined },
): PageHead["preview"] {
  const kit = views.find(({ slug }) => page.startsWith(`/kits/${slug}/`));
  const shown = kit ?? views[0];
  const property = (name: string, content: string | number) => ({ property: `og:${name}`, content });
  return [
    property("type", kit ? "article" : "website"),
    property("site_name", settings.title),
    property("title", title),
    property("description", summary ?? kit?.kit.summary ?? settings.summary),
    property("url", canonical),
    ...(shown
      ? [
          property("image", `${settings.url}kits/${shown.slug}/social.png`),
          property("image:type", "image/png"),
          property("image:width", SOCIAL.width),
          property("image:height", SOCIAL.height),
          property("image:alt", `${shown.kit.title}, a book folded into a picture, seen from the front`),
        ]
      : []),
  ];
}
