import { BOUNDS } from "../kit/bounds.ts";
import { type AddressParameters, fromAddress, type Ignored, toAddress } from "../refit/address.ts";
import type { Refit } from "../refit/refit.ts";
import { readNumber } from "../units/written-number.ts";
import { bookFigures } from "./book-figures.ts";

export const LIGHTS = ["with", "without"] as const;
/** Kits made for folding alone, or all that can be folded so. */
export const KNIVES = ["without", "made"] as const;
export const FITS = ["change", "own"] as const;
export const SORTS = ["title", "hours", "fit"] as const;

/** What a reader looks for among the kits; undefined asks for nothing. */
export interface Query {
  /** Her book; empty where none is stated. */
  readonly book: Refit;
  /** At most so many hours of work. */
  readonly hours: number | undefined;
  /** Exactly so many levels. */
  readonly levels: number | undefined;
  readonly light: (typeof LIGHTS)[number] | undefined;
  /** Kits that can be made without a knife, or only those that are made for it. */
  readonly knife: (typeof KNIVES)[number] | undefined;
  /** Kits that fit as they are, or also those that fit with a change. */
  readonly fit: (typeof FITS)[number] | undefined;
  /** Undefined: by fit where a book is stated, otherwise by title. */
  readonly sort: (typeof SORTS)[number] | undefined;
}

/** What a reader may wish of a kit besides that it fits, in the order in which an address has it. */
export const WISHES = ["hours", "levels", "light", "knife", "fit", "sort"] as const satisfies readonly (keyof Query)[];

export type Wish = (typeof WISHES)[number];

export const NO_QUERY: Query = {
  book: {},
  hours: undefined,
  levels: undefined,
  light: undefined,
  knife: undefined,
  fit: undefined,
  sort: undefined,
};

/** Writes a query as address parameters, the book under the names that kit pages read: `height=210&hours=6`. */
export function toQueryAddress(query: Query): string {
  const asked = WISHES.filter((key) => query[key] !== undefined);
  const book = toAddress(bookFigures(query.book));
  return [...(book === "" ? [] : [book]), ...asked.map((key) => `${key}=${query[key]}`)].join("&");
}

/** What an address asks the finder for, and what it asks for in vain. */
export interface QueryRead {
  readonly query: Query;
  readonly ignored: readonly Ignored[];
  /** Wishes that are none, by name, with what was given. */
  readonly noWishes: readonly { readonly wish: Wish; readonly given: string }[];
}

/** Reads a query; what cannot be taken is left out and named once, so that an old or damaged link still opens the catalogue. */
export function fromQueryAddress(address: AddressParameters): QueryRead {
  const { refit, ignored } = fromAddress(address);
  const given = (wish: Wish): string | undefined => {
    const all = [...new Set(address.getAll(wish))];
    return all.length === 0 ? undefined : all.join(" & ");
  };
  const wishes = {
    hours: readHours(given("hours") ?? ""),
    levels: readLevels(given("levels") ?? ""),
    light: choice(LIGHTS, given("light")),
    knife: choice(KNIVES, given("knife")),
    fit: choice(FITS, given("fit")),
    sort: choice(SORTS, given("sort")),
  };
  const noWishes = WISHES.flatMap((wish) => {
    const text = given(wish);
    return text === undefined || wishes[wish] !== undefined ? [] : [{ wish, given: text }];
  });
  return { query: { book: bookFigures(refit), ...wishes }, ignored, noWishes };
}

/** What kits are made with for a query: the reader's book, and without a knife where that is wished. */
export function soughtRefit({ book, knife }: Query): Refit {
  return knife === undefined ? book : { ...book, foldStyle: "corner" };
}

/** Hours as written, with a point or a comma; undefined where it is no number of hours from a quarter to 999. */
export function readHours(text: string): number | undefined {
  const hours = readNumber(text);
  return hours >= 0.25 && hours <= 999 ? hours : undefined;
}

function readLevels(text: string): number | undefined {
  const { least, most } = BOUNDS.levels;
  const levels = /^\d$/.test(text) ? Number(text) : 0;
  return levels >= least && levels <= most ? levels : undefined;
}

function choice<T extends string>(allowed: readonly T[], text: string | undefined): T | undefined {
  return allowed.find((one) => one === text);
}
