import type { Kit, Licence, Version } from "../../core/kit/kit.ts";

/** What a kit says of its own publication, ready to show. */
export interface Edition {
  /** Newest first. */
  readonly versions: readonly (Version & { readonly day: string })[];
  readonly current: (Version & { readonly day: string }) | undefined;
  readonly licence: Licence | undefined;
  /** The author's links, each with the host that it leads to. */
  readonly links: readonly { readonly label: string; readonly url: string; readonly host: string }[];
}

const MONTHS = "January February March April May June July August September October November December".split(" ");

export function editionOf(kit: Kit): Edition {
  const versions = kit.versions.map((one) => ({ ...one, day: dayText(one.date) }));
  return {
    versions,
    current: versions[0],
    licence: kit.licence,
    links: kit.links.map((link) => ({ ...link, host: new URL(link.url).host })),
  };
}

/** `2026-10-03` as `3 October 2026`, on every machine the same. */
function dayText(date: string): string {
  const [year, month, day] = date.split("-").map(Number);
  return `${day} ${MONTHS[month! - 1]} ${year}`;
}
