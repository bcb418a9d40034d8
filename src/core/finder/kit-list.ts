import type { Query } from "./query.ts";
import type { Verdict } from "./verdict.ts";

/** A kit as its card in the catalogue states it. Minutes are for the kit's own book. */
export interface KitEntry {
  readonly slug: string;
  readonly title: string;
  readonly minutes: number;
  readonly levels: number;
  readonly light: boolean;
}

/** What is known of a kit in a book; one that could not be worked out is not known. */
export type Known = Verdict | { readonly kind: "unknown"; readonly cause: "not-loaded" | "failed" };

export type Verdicts = ReadonlyMap<string, Known>;

const FIT_ORDER: Readonly<Record<Known["kind"], number>> = {
  fits: 0,
  check: 1,
  change: 2,
  poor: 3,
  no: 4,
  unknown: 5,
};

/** The kits that a query asks for, in its order; equals stand by title, in a language's (BCP 47) alphabet. */
export function listKits<T extends KitEntry>(
  kits: readonly T[],
  verdicts: Verdicts,
  query: Query,
  language: string,
): T[] {
  const compare = comparers(verdicts)[sortOf(query)];
  return kits
    .filter((kit) => isAskedFor(kit, verdicts, query))
    .sort((a, b) => compare(a, b) || a.title.localeCompare(b.title, language));
}

/** The order that is in force: a stated book puts what fits it first. */
export function sortOf(query: Query): NonNullable<Query["sort"]> {
  return query.sort ?? (Object.keys(query.book).length > 0 ? "fit" : "title");
}

/** Minutes of work in the reader's book where it is known, to the quarter hour that the card shows. */
export function minutesOf(kit: KitEntry, verdicts: Verdicts): number {
  const verdict = verdicts.get(kit.slug);
  const minutes = verdict && "minutes" in verdict ? verdict.minutes : kit.minutes;
  return Math.max(1, Math.round(minutes / 15)) * 15;
}

function isAskedFor(kit: KitEntry, verdicts: Verdicts, query: Query): boolean {
  const kind = verdicts.get(kit.slug)?.kind;
  const fits =
    query.fit === undefined || kind === undefined || kind === "fits" || kind === "check" || kind === query.fit;
  return (
    fits &&
    (query.levels === undefined || kit.levels === query.levels) &&
    (query.light === undefined || kit.light === (query.light === "with")) &&
    (query.hours === undefined || minutesOf(kit, verdicts) <= query.hours * 60)
  );
}

function comparers(verdicts: Verdicts): Record<NonNullable<Query["sort"]>, (a: KitEntry, b: KitEntry) => number> {
  const rank = (kit: KitEntry): number => FIT_ORDER[verdicts.get(kit.slug)?.kind ?? "unknown"];
  return {
    title: () => 0,
    hours: (a, b) => minutesOf(a, verdicts) - minutesOf(b, verdicts),
    fit: (a, b) => rank(a) - rank(b),
  };
}
