import type { Kit, Licence, Version } from "../../core/kit/kit.ts";
import { dayText } from "../../words/dates.ts";

/** What a kit says of its own publication, ready to show. */
export interface Edition {
  /** Newest first. */
  readonly versions: readonly (Version & { readonly day: string })[];
  readonly current: (Version & { readonly day: string }) | undefined;
  readonly licence: Licence | undefined;
}

export function editionOf(kit: Kit): Edition {
  const versions = kit.versions.map((one) => ({ ...one, day: dayText(one.date) }));
  return {
    versions,
    current: versions[0],
    licence: kit.licence,
  };
}
