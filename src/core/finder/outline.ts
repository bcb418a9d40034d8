import type { Book } from "../book/book.ts";
import type { FitWish, Kit } from "../kit/kit.ts";
import type { UnitSystem } from "../units/length.ts";

/** What of a kit decides where its picture lies in a book: a hundredth of the kit. Lengths mm. */
export interface KitOutline {
  readonly slug: string;
  readonly units: UnitSystem;
  /** Name and depth of each level. */
  readonly levels: readonly (readonly [name: string, depth: number])[];
  /** Number of the background level. */
  readonly background: number;
  readonly book: Book;
  readonly fit: FitWish;
  /** Width and height of the picture, in its own units. */
  readonly picture: readonly [width: number, height: number];
}

export function outlineOf({ slug, units, levels, book, fit, picture }: Kit): KitOutline {
  return {
    slug,
    units,
    levels: levels.map(({ name, depth }) => [name, depth]),
    background: picture.background,
    book,
    fit,
    picture: [picture.width, picture.height],
  };
}

/** A kit of which nothing is known but its outline: its picture has no shapes, and there is neither light nor window. */
export function outlinedKit({ slug, units, levels, background, book, fit, picture: [width, height] }: KitOutline): Kit {
  return {
    ...UNKNOWN,
    slug,
    units,
    levels: levels.map(([name, depth], i) => ({ name, depth, line: undefined, background: i + 1 === background })),
    book,
    fit,
    picture: { width, height, background, shapes: [] },
  };
}

const UNKNOWN = {
  title: "",
  summary: "",
  versions: [],
  licence: undefined,
  links: [],
  credit: undefined,
  gaugeLines: [],
  gaugeTile: undefined,
  light: undefined,
  cells: undefined,
  insert: undefined,
  sheets: [],
  motifs: [],
  waste: 0,
  prices: {},
  currency: "",
  rates: { leaf: 0, score: 0, mark: 0, cut: 0, fold: 0, check: 0, tack: 0, notch: 0, part: 0, first: 1 },
  drying: { glue: 0, frame: 0 },
  supplies: [],
  photos: [],
} as const satisfies Partial<Kit>;
