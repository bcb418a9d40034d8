import type { GuidePage } from "../../core/guide/guide-page.ts";
import { PAPERS } from "../../output/views/paper.ts";
import type { ClassEntry } from "./class-entry.ts";
import type { KitEntry } from "./kit-entry.ts";

/** What of a library has pages. */
interface Listed {
  readonly kits: readonly Pick<KitEntry, "slug" | "card">[];
  readonly classes: readonly Pick<ClassEntry, "slug" | "card">[];
  readonly guide: readonly GuidePage[];
}

/** The pages of a site, and the files that a text may lead to, as addresses below it: `/kits/moon/packet-a4.pdf`. */
export function addressesOf({ kits, classes, guide }: Listed): ReadonlySet<string> {
  return new Set([
    "/",
    "/glossary/",
    ...(guide.length > 0 ? ["/guide/"] : []),
    ...guide.map(({ name }) => `/guide/${name}/`),
    ...kits.flatMap(({ slug, card: { hasLight } }) =>
      [
        ...["", "packet/", "packet/large.html", "make/", "bench/", "pattern.json", "pattern.csv", "front.svg"],
        ...(hasLight ? ["front-lit.svg"] : []),
        ...PAPERS.flatMap(({ name }) => [
          `packet-${name}.pdf`,
          `packet-bench-${name}.pdf`,
          `table-large-${name}.pdf`,
          `table-compact-${name}.pdf`,
        ]),
      ].map((file) => `/kits/${slug}/${file}`),
    ),
    ...classes.flatMap(({ slug, card }) => [
      `/classes/${slug}/`,
      ...card.seats.map((number) => `/classes/${slug}/seat-${number}/`),
    ]),
  ]);
}
