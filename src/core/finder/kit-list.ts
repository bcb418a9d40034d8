import { QUALITIES } from "../refit/quality.ts";
import type { Query } from "./query.ts";
import type { Verdict } from "./verdict.ts";

/** A kit as its card in the catalogue states it. Minutes are for the kit's own book. */
export interface KitEntry {
  readonly slug: string;
  readonly title: string;
  readonly minutes: number;
  readonly levels: number;
  readonly light: boolean;
  /** Whether it is made for folding without a knife, and how long that takes; undefined where it cannot be made so. */
  readonly madeToFold?: boolean;
  readonly folded?: number | undefined;
}

/** What is known of a kit in a book; one that could not be worked out is not known. */
export type Known = Verdict | { readonly kind: "unknown"; readonly cause: "not-loaded" | "failed" };

export type Verdicts = ReadonlyMap<string, Known>;

/** What a kit's outline tells of it for a book: whether its picture lies in it as it is, and how far the book is from the kit's own. */
export interface Near {
  readonly lies: boolean;
  readonly farness: number;
}

/** Kits among which a reader seeks, with what is known of them for her book. */
export interface Sought<T extends KitEntry> {
  readonly kits: readonly T[];
  readonly verdicts: Verdicts;
  readonly near: ReadonlyMap<string, Near>;
  readonly query: Query;
}

/** Kits that were not asked yet stand before those that cannot be made. */
const FIT_ORDER: Readonly<Record<Known["kind"] | "waiting", number>> = {
  fits: 0,
  check: 1,
  change: 2,
  poor: 3,
  waiting: 4,
  no: 5,
  unknown: 6,
};

/** The kits that a query asks for, in its order; equals stand by title, in a language's (BCP 47) alphabet. */
export function listKits<T extends KitEntry>(sought: Sought<T>, language: string): T[] {
  const compare = comparers(sought)[sortOf(sought.query)];
  return sought.kits
    .filter((kit) => isAskedFor(kit, sought.verdicts, sought.query))
    .sort((a, b) => compare(a, b) || a.title.localeCompare(b.title, language));
}

/** Of the kits that a query may show, those that are to be asked so that `most` are known: the likeliest first. */
export function wantsAsked<T extends KitEntry>({ kits, verdicts, near, query }: Sought<T>, most: number): T[] {
  const shown = kits.filter((kit) => isWished(kit, query));
  const asked = shown.filter(({ slug }) => (verdicts.get(slug)?.kind ?? "no") !== "no").length;
  const far = ({ slug }: T): number => near.get(slug)?.farness ?? 0;
  const lies = ({ slug }: T): number => Number(near.get(slug)?.lies ?? true);
  return shown
    .filter(({ slug }) => !verdicts.has(slug))
    .sort((a, b) => lies(b) - lies(a) || far(a) - far(b))
    .slice(0, Math.max(0, most - asked));
}

/** The order that is in force: a stated book puts what fits it first. */
export function sortOf(query: Query): NonNullable<Query["sort"]> {
  return query.sort ?? (Object.keys(query.book).length > 0 ? "fit" : "title");
}

/** Minutes of work in the reader's book where it is known, to the quarter hour that the card shows. */
export function minutesOf(kit: KitEntry, verdicts: Verdicts, knife?: Query["knife"]): number {
  const verdict = verdicts.get(kit.slug);
  const own = (knife && kit.folded) ?? kit.minutes;
  const minutes = verdict && "minutes" in verdict ? verdict.minutes : own;
  return Math.max(1, Math.round(minutes / 15)) * 15;
}

function isAskedFor(kit: KitEntry, verdicts: Verdicts, query: Query): boolean {
  const kind = verdicts.get(kit.slug)?.kind;
  const fits =
    query.fit === undefined || kind === undefined || kind === "fits" || kind === "check" || kind === query.fit;
  return (
    fits &&
    isWished(kit, query) &&
    (query.hours === undefined || minutesOf(kit, verdicts, query.knife) <= query.hours * 60)
  );
}

/** Whether a kit is what a query wishes for, whatever the book. */
function isWished(kit: KitEntry, query: Query): boolean {
  return (
    (query.levels === undefined || kit.levels === query.levels) &&
    (query.light === undefined || (kit.light && query.knife === undefined) === (query.light === "with")) &&
    isFolded(kit, query.knife)
  );
}

function isFolded({ madeToFold = false, folded }: KitEntry, knife: Query["knife"]): boolean {
  if (knife === undefined) return true;
  return knife === "made" ? madeToFold : folded !== undefined;
}

type Compare = (a: KitEntry, b: KitEntry) => number;

function comparers({
  verdicts,
  near,
  query,
}: Pick<Sought<KitEntry>, "verdicts" | "near" | "query">): Record<NonNullable<Query["sort"]>, Compare> {
  const rank = ({ slug }: KitEntry): number => FIT_ORDER[verdicts.get(slug)?.kind ?? "waiting"];
  const flaws = ({ slug }: KitEntry): number => flawsOf(verdicts.get(slug));
  const far = ({ slug }: KitEntry): number => near.get(slug)?.farness ?? 0;
  return {
    title: () => 0,
    hours: (a, b) => minutesOf(a, verdicts, query.knife) - minutesOf(b, verdicts, query.knife),
    fit: (a, b) => rank(a) - rank(b) || flaws(a) - flaws(b) || far(a) - far(b),
  };
}

/** How much is against a kit among those that fit alike: what is to be looked at, or how well its best change comes out. */
function flawsOf(verdict: Known | undefined): number {
  if (verdict && "reasons" in verdict) return verdict.reasons.length;
  return verdict?.kind === "change" ? QUALITIES.indexOf(verdict.offers[0]!.quality) : 0;
}
