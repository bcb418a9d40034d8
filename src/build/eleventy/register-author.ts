import { makeabilityOf } from "../../core/makeability/makeability.ts";
import { seenBothWays } from "../../core/makeability/silhouette-seen.ts";
import { authorIndex, authorPage, cornerAuthorPage } from "../../output/parts/author.ts";
import { seenPart } from "../../output/parts/kept.ts";
import * as say from "../../words/messages.ts";
import type { KitEntry } from "../library/kit-entry.ts";
import type { PageSource } from "../library/page-source.ts";
import { linkFromPage } from "./link-from-page.ts";
import type { SiteConfig } from "./site-config.ts";

/** Registers the pages for authors: one for each kit, and the list of them. `library.authored` names none in a build. */
export function registerAuthors(
  config: SiteConfig,
  opened: () => PageSource,
  link: (from: string, target: string) => string,
): void {
  const linkOf = linkFromPage(link);
  const entryOf = (slug: string): KitEntry => opened().kits.find((one) => one.slug === slug)!;
  const titleOf = (slug: string): string => entryOf(slug).card.kit.title;
  config.addFilter("authorPage", (slug: string, page: string) => {
    const view = opened().view(slug);
    const told = [...entryOf(slug).warnings, ...view.notes];
    if (view.way === "cut") return authorPage(view, makeabilityOf(view), told, linkOf(page));
    return cornerAuthorPage(view, seenPart(seenBothWays(view.kit, view.pattern)), told, linkOf(page));
  });
  config.addFilter("authorIndex", (page: string) =>
    authorIndex(
      opened().kits.map(({ slug, card }) => ({ kit: card.kit, troubles: opened().troubles(slug) })),
      linkOf(page),
    ),
  );
  config.addTemplate("author.njk", "{{ slug | authorPage(page.url) | safe }}", {
    layout: "author.njk",
    eleventyComputed: {
      title: ({ slug }: { slug: string }) => say.makeableTitle({ title: titleOf(slug) }),
      summary: ({ slug }: { slug: string }) => say.makeableSummary({ title: titleOf(slug) }),
    },
    permalink: "author/{{ slug }}/index.html",
    pagination: { data: "library.authored", size: 1, alias: "slug" },
    eleventyExcludeFromCollections: true,
  });
  config.addTemplate("authors.njk", "{{ page.url | authorIndex | safe }}", {
    layout: "author.njk",
    eleventyComputed: { title: () => say.makeableIndexTitle(), summary: () => say.makeableIndexSummary() },
    permalink: "{{ authors }}/index.html",
    pagination: { data: "library.authors", size: 1, alias: "authors" },
    eleventyExcludeFromCollections: true,
  });
}
