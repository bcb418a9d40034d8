import type { Book } from "../../../src/core/book/book.ts";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Fan } from "../../../src/core/fan/fan.ts";
import { PLAIN_CORNERS } from "../../../src/core/kit/corner-wish.ts";
import type { FitWish, Kit, Level } from "../../../src/core/kit/kit.ts";
import { computePattern } from "../../../src/core/pattern/compute.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { box } from "../window/made.ts";

export const BOOK: Book = {
  leafHeight: 200,
  leafWidth: 120,
  blockThickness: 1.4,
  leaves: 14,
  pageOneLeaf: leafNumber(3),
  lastPage: 24,
  plates: [],
  direction: "ltr",
  square: 3,
  boardThickness: 2,
};

/** Three levels, 20, 40 and 60 mm deep; the last is the background. */
export const LEVELS: readonly Level[] = [20, 40, 60].map((depth, i) => ({
  name: `level ${i + 1}`,
  depth,
  line: undefined,
  background: i === 2,
}));

export const FIT: FitWish = {
  borderLeaves: [2, 2],
  shape: { solve: "nothing", pictureLeaves: "fill", height: 100, opening: Math.PI / 6 },
  head: 50,
  view: "along",
  spine: "rounded",
  markStep: 0.5,
  leastTab: 3,
  foldStyle: "single",
  corner: PLAIN_CORNERS,
  cutWith: "knife",
  tackWith: "dots",
  gutterClearance: 0,
  flapBulk: 2,
  batch: 20,
  lostLeaves: [],
};

/** Upright bands, one unit wide and as high as the picture, each at the level that is given. */
export function bandsOf(levels: readonly number[]): Kit["picture"] {
  const rings = levels.map((level, i) => ({ level, rule: "nonzero" as const, rings: [box(i, 0, i + 1, 10)] }));
  return { width: levels.length, height: 10, background: 3, shapes: rings };
}

export const BANDS = [1, 2, 1, 3, 3, 2, 1, 1, 2, 3];

interface Changes extends Partial<Omit<Kit, "book" | "fit">> {
  readonly book?: Partial<Book>;
  readonly fit?: Partial<FitWish>;
}

/**
 * A kit of ten bands on ten picture leaves between two borders of two. Walking along a rounded fan every leaf stands for an
 * equal part of the picture, so each shows its own band.
 */
export function kitOf({ book, fit, ...changes }: Changes = {}): Kit {
  return {
    slug: "bands",
    title: "Bands",
    summary: "Ten bands.",
    units: "mm",
    versions: [],
    licence: undefined,
    links: [],
    credit: undefined,
    levels: LEVELS,
    gaugeLines: [],
    gaugeTile: undefined,
    book: { ...BOOK, ...book },
    fit: { ...FIT, ...fit },
    light: undefined,
    cells: undefined,
    insert: undefined,
    sheets: [],
    motifs: [],
    waste: 0,
    prices: {},
    currency: "EUR",
    rates: { leaf: 1, score: 1, mark: 1, cut: 1, fold: 1, check: 1, tack: 1, notch: 1, part: 1, first: 2 },
    drying: { glue: 30, frame: 720 },
    supplies: [],
    picture: bandsOf(BANDS),
    photos: [],
    ...changes,
  };
}

/** The pattern of a kit that fits. @throws Error where it does not */
export function patternFor(kit: Kit): Pattern {
  const result = computePattern(kit);
  if (!result.fits) throw new Error(`does not fit: ${result.finding.kind}`);
  return result.pattern;
}

/** The fan of the kit's own figures. */
export function fanFor({ book, fit }: Kit, opening = Math.PI / 6): Fan {
  const { leaves, leafWidth, blockThickness, direction } = book;
  return { leaves, leafWidth, blockThickness, opening, spine: fit.spine, direction };
}
