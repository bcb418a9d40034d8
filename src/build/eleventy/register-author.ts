import { makeabilityOf } from "../../core/makeability/makeability.ts";
import { isSlight } from "../../core/makeability/trouble.ts";
import { authorIndex, authorPage } from "../../output/parts/author.ts";
import * as say from "../../words/messages.ts";
import type { Library } from "../library/library.ts";
import { authorWarnings } from "../tell.ts";
import { linkFromPage } from "./link-from-page.ts";
import type { SiteConfig } from "./site-config.ts";

/** Registers the pages for authors: one for each kit, and the list of them. `library.authored` names none in a build. */
export function registerAuthors(
  config: SiteConfig,
  opened: () => Library,
  link: (from: string, target: string) => string,
): void {
  const linkOf = linkFromPage(link);
  const titleOf = (slug: string): string => opened().view(slug).kit.title;
  config.addFilter("authorPage", (slug: string, page: string) => {
    const view = opened().view(slug);
    return authorPage(view, makeabilityOf(view), [...authorWarnings(view), ...view.notes], linkOf(page));
  });
  config.addFilter("authorIndex", (page: string) =>
    authorIndex(
      opened().views.map((view) => ({ view, troubles: toLookAt(view) })),
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

function toLookAt(view: Parameters<typeof makeabilityOf>[0]): number {
  return makeabilityOf(view).troubles.filter(({ trouble }) => !isSlight(trouble)).length;
}
