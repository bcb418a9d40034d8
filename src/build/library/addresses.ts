import type { GuidePage } from "../../core/guide/guide-page.ts";
import type { ClassView } from "../../output/views/class/class-view.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { PAPERS } from "../../output/views/paper.ts";

/** What of a library has pages. */
interface Listed {
  readonly views: readonly KitView[];
  readonly classes: readonly ClassView[];
  readonly guide: readonly GuidePage[];
}

/** The pages of a site, and the files that a text may lead to, as addresses below it: `/kits/moon/packet-a4.pdf`. */
export function addressesOf({ views, classes, guide }: Listed): ReadonlySet<string> {
  return new Set([
    "/",
    "/glossary/",
    ...(guide.length > 0 ? ["/guide/"] : []),
    ...guide.map(({ name }) => `/guide/${name}/`),
    ...views.flatMap(({ slug, pattern: { pocket } }) =>
      [
        ...[
          "",
          "packet/",
          "packet/large.html",
          "packet/compact.html",
          "make/",
          "bench/",
          "pattern.json",
          "pattern.csv",
          "front.svg",
        ],
        ...(pocket ? ["front-lit.svg"] : []),
        ...PAPERS.flatMap(({ name }) => [
          `packet-${name}.pdf`,
          `packet-bench-${name}.pdf`,
          `table-large-${name}.pdf`,
          `table-compact-${name}.pdf`,
        ]),
      ].map((file) => `/kits/${slug}/${file}`),
    ),
    ...classes.flatMap(({ slug, seats }) => [
      `/classes/${slug}/`,
      ...seats.map(({ number }) => `/classes/${slug}/seat-${number}/`),
    ]),
  ]);
}
