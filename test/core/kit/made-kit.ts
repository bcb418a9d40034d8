import type { Book } from "../../../src/core/book/book.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { PLAIN_CORNERS } from "../../../src/core/kit/corner-wish.ts";
import type { FitWish, Kit } from "../../../src/core/kit/kit.ts";
import type { LightWish } from "../../../src/core/light/light.ts";
import type { LevelMap } from "../../../src/core/picture/level-map.ts";
import type { WindowWish } from "../../../src/core/window/window.ts";

/** What a test changes of the made kit; of book and fit, single figures. */
export type KitChanges = Partial<Omit<Kit, "book" | "fit">> & {
  readonly book?: Partial<Book>;
  readonly fit?: Partial<FitWish>;
};

/** A square of 60 in the middle of a square of 100: the front level on the background. */
export const SQUARE: LevelMap = {
  width: 100,
  height: 100,
  background: 2,
  shapes: [{ level: 1, rule: "nonzero", rings: [square(20, 80)] }],
};

/** A square well of 70 in a rim of 90: the front level, the background behind it, the well deepest. */
export const WELL: LevelMap = {
  width: 100,
  height: 100,
  background: 2,
  shapes: [
    { level: 1, rule: "nonzero", rings: [square(5, 95)] },
    { level: 3, rule: "nonzero", rings: [square(15, 85)] },
  ],
};

export const BOOK: Book = {
  leafHeight: 120,
  leafWidth: 80,
  blockThickness: 6,
  leaves: 40,
  pageOneLeaf: leafNumber(1),
  lastPage: 80,
  plates: [],
  direction: "ltr",
  square: 3,
  boardThickness: 2,
};

const FIT: FitWish = {
  borderLeaves: [4, 4],
  shape: { solve: "opening", pictureLeaves: "fill", height: 40 },
  head: 30,
  view: "front",
  spine: "flat",
  markStep: 1,
  leastTab: 3,
  foldStyle: "single",
  corner: PLAIN_CORNERS,
  cutWith: "knife",
  tackWith: "dots",
  gutterClearance: 5,
  flapBulk: 1.2,
  batch: 20,
  lostLeaves: [],
};

/** A small kit that needs no file: 40 leaves of 120 × 80 mm, two levels, picture 40 mm high. */
export function madeKit({ book, fit, ...changes }: KitChanges = {}): Kit {
  return {
    slug: "made",
    title: "Made",
    summary: "A square.",
    units: "mm",
    versions: [],
    licence: undefined,
    links: [],
    credit: undefined,
    levels: [
      { name: "square", depth: 10, line: 1, background: false },
      { name: "wall", depth: 20, line: 2, background: true },
    ],
    gaugeLines: [10, 20],
    gaugeTile: undefined,
    light: undefined,
    cells: undefined,
    insert: undefined,
    sheets: [{ name: "A4", width: 210, height: 297 }],
    motifs: [],
    waste: 0,
    prices: {},
    currency: "EUR",
    rates: { leaf: 6, score: 6, mark: 6, cut: 6, fold: 6, check: 6, tack: 6, notch: 6, part: 60, first: 2 },
    drying: { glue: 30, frame: 720 },
    supplies: [],
    picture: SQUARE,
    photos: [],
    ...changes,
    book: { ...BOOK, ...book },
    fit: { ...FIT, ...fit },
  };
}

export const LIGHT: LightWish = { level: 3, diameter: 20, height: 20, clearance: 1, setback: 4, floor: "auto" };

export const WINDOW: WindowWish = { outline: 1, lip: 3, hinge: "left", panel: "wrap" };

/** The made kit with a well for a light and, unless a test takes it away, a window; 60 leaves of 160 × 110 mm, picture 80 mm high. */
export function litKit({ book, fit, ...changes }: KitChanges = {}): Kit {
  return madeKit({
    levels: [
      { name: "rim", depth: 10, line: undefined, background: false },
      { name: "wall", depth: 15, line: undefined, background: true },
      { name: "well", depth: 35, line: undefined, background: false },
    ],
    gaugeLines: [],
    picture: WELL,
    light: LIGHT,
    insert: WINDOW,
    ...changes,
    book: { leafHeight: 160, leafWidth: 110, blockThickness: 9, leaves: 60, lastPage: 120, ...book },
    fit: { shape: { solve: "opening", pictureLeaves: "fill", height: 80 }, ...fit },
  });
}

function square(from: number, to: number): [number, number][] {
  return [
    [from, from],
    [to, from],
    [to, to],
    [from, to],
  ];
}
