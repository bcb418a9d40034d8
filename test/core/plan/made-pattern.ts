import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Pattern, PatternLeaf } from "../../../src/core/pattern/pattern.ts";
import type { Part, PartKind } from "../../../src/core/window/part.ts";
import type { BookWindow } from "../../../src/core/window/window.ts";
import { BOOK, LIGHT, WINDOW } from "../kit/made-kit.ts";

/** A folded leaf: its spans end at `bounds`, the first at the head, with levels in order; cuts 20 deep at the bounds within. */
export function madeLeaf(
  leaf: number,
  patternPage: number | null,
  levels: readonly number[],
  bounds: readonly number[] = levels.map((_, i) => (120 * (i + 1)) / levels.length),
): PatternLeaf {
  return {
    leaf: leafNumber(leaf),
    patternPage,
    bookPage: 2 * leaf - 1,
    name: { kind: "numbered", recto: 2 * leaf - 1, verso: 2 * leaf },
    x: levels.map(() => leaf),
    spans: levels.map((level, i) => ({ from: bounds[i - 1] ?? 0, to: bounds[i]!, level })),
    cuts: bounds.slice(0, -1).map((at) => ({ at, depth: 20 })),
    tacks: [],
  };
}

/** A pattern by hand: a border leaf of one level, picture leaves of two levels and three spans, a border leaf. */
export function madePattern({
  fit,
  ...changes
}: Partial<Omit<Pattern, "fit">> & { fit?: Partial<Pattern["fit"]> } = {}): Pattern {
  return {
    book: BOOK,
    levels: [
      { name: "square", depth: 10, line: undefined, background: false },
      { name: "wall", depth: 20, line: undefined, background: true },
    ],
    background: 2,
    leaves: [
      madeLeaf(4, null, [2]),
      madeLeaf(5, 1, [2, 1, 2]),
      madeLeaf(6, 3, [2, 1, 2]),
      madeLeaf(7, 5, [2, 1, 2]),
      madeLeaf(8, null, [2]),
    ],
    merged: [],
    lostLeaves: [],
    pocket: undefined,
    window: undefined,
    ...changes,
    fit: {
      firstLeaf: leafNumber(5),
      lastLeaf: leafNumber(7),
      opening: 1,
      spine: "flat",
      view: "front",
      head: 30,
      height: 40,
      width: 40,
      stretch: 1,
      tipWidth: 39,
      holdWidth: 34,
      boardWidth: 60,
      restingOpening: 0.2,
      foldStyle: "single",
      markStep: 1,
      leastTab: 3,
      ...fit,
    },
  };
}

/** A pocket whose notches are in these leaves. */
export function madePocket(...leaves: readonly number[]): NonNullable<Pattern["pocket"]> {
  return {
    light: LIGHT,
    floor: 60,
    centre: { x: 0, z: 60 },
    notches: leaves.map((leaf) => ({ leaf: leafNumber(leaf), from: 30, to: 60, depth: 30, remaining: 50 })),
    leastWidth: 30,
    largest: { diameter: 28, height: 40 },
  };
}

/** A rectangle to cut, its corner at 7 mm from the left and 11 from the top of its frame. */
export function madePart(
  kind: PartKind,
  material: Part["material"],
  width: number,
  height: number,
  changes: Partial<Part> = {},
): Part {
  const [left, top] = [7, 11];
  const outline = [
    [left, top],
    [left + width, top],
    [left + width, top + height],
    [left, top + height],
  ] as const;
  return { id: kind, kind, material, count: 1, frame: "own", outlines: [outline], scores: [], marks: [], ...changes };
}

/** A window of rectangles: one part of each kind, two closure tabs, and two motifs alike. */
export function madeWindow(changes: Partial<BookWindow> = {}): BookWindow {
  return {
    wish: WINDOW,
    frame: madePart("base-frame", "card", 100, 120),
    glazing: madePart("glazing", "acetate", 90, 110),
    door: madePart("door", "card", 100, 100),
    tab: madePart("closure-tab", "card", 30, 20, { count: 2 }),
    guide: madePart("decoration-guide", "paper", 90, 100),
    holder: madePart("holder", "card", 150, 40),
    motifs: [
      {
        ...madePart("motif", "card", 20, 20, { id: "motif-gull", motif: "gull", count: 2 }),
        seat: [40, 50],
        spacers: 1,
      },
    ],
    stringLength: 130,
    frameLength: 440,
    ...changes,
  };
}
