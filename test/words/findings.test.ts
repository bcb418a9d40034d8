import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { leafNumber } from "../../src/core/book/leaf-number.ts";
import type { Doubt } from "../../src/core/findings/doubt.ts";
import type { Failure } from "../../src/core/findings/failure.ts";
import type { OfferedChange } from "../../src/core/refit/offer.ts";
import { OF_A_BOOK } from "../../src/core/refit/refit.ts";
import { FIT_COLUMNS } from "../../src/input/class/schema-seat.ts";
import { authorFailure } from "../../src/words/findings/author-failure.ts";
import { authorDoubt, doubtText } from "../../src/words/findings/doubts.ts";
import { whyText } from "../../src/words/findings/failure-why.ts";
import { offerText } from "../../src/words/findings/offers.ts";
import { readerRemedy } from "../../src/words/findings/reader-remedy.ts";
import { teacherRemedy } from "../../src/words/findings/teacher-remedy.ts";

const LEVELS = [{ name: "rim" }, { name: "wall" }, { name: "well" }];
const MM = { units: "mm", levels: LEVELS } as const;
const INCH = { units: "in", levels: LEVELS } as const;

const light = { level: 3, diameter: 38, height: 45, clearance: 1 } as const;
const FAILURES: readonly Failure[] = [
  { kind: "pages-need-more-leaves", lastPage: 399, leaves: 180, pageOneLeaf: leafNumber(5), needed: 204 },
  { kind: "picture-flat", height: 5, leastTab: 3 },
  { kind: "no-page", pageOneLeaf: leafNumber(300), plates: 0, leaves: 204 },
  { kind: "no-page", pageOneLeaf: leafNumber(5), plates: 200, leaves: 204 },
  { kind: "plates-after-last-page", entry: 1, afterPage: 400, lastPage: 399 },
  { kind: "too-few-leaves", before: 12, picture: 2, after: 12, leaves: 20, most: -4 },
  { kind: "too-few-leaves", before: 12, picture: 100, after: 12, leaves: 60, most: 36 },
  { kind: "levels-out-of-order", level: 2, depth: 10, before: 18 },
  {
    kind: "flap-in-gutter",
    level: 3,
    depth: 42,
    reach: 84,
    leafWidth: 80,
    clearance: 5,
    deepest: 37.54,
    foldStyle: "single",
  },
  { kind: "needs-knife", part: "light" },
  { kind: "needs-knife", part: "window" },
  { kind: "background-shown", level: 2 },
  { kind: "no-room-for-corners", leafWidth: 39.9, clearance: 30, least: 10 },
  { kind: "nothing-to-show", height: 5, leastTab: 3 },
  { kind: "opening-too-wide", opening: 3.5, widest: Math.PI, view: "front" },
  {
    kind: "picture-off-leaf",
    head: 40,
    height: 130,
    leafHeight: 150,
    room: 110,
    heightSolved: false,
    headStated: true,
  },
  { kind: "picture-off-leaf", head: 0, height: 190, leafHeight: 150, room: 150, heightSolved: true, headStated: false },
  { kind: "picture-too-narrow", height: 12, width: 12, leaves: 100, least: 13.3, leastHeight: 13.3 },
  {
    kind: "picture-too-wide",
    height: 300,
    width: 300,
    leaves: 100,
    widest: Math.PI,
    most: 250.26,
    mostHeight: 250.26,
    enough: 150,
  },
  {
    kind: "picture-too-wide",
    height: 300,
    width: 300,
    leaves: 100,
    widest: Math.PI,
    most: 250.26,
    mostHeight: 250.26,
    enough: undefined,
  },
  {
    kind: "leaves-show-too-little",
    height: 130,
    width: 130,
    opening: 0.7,
    leaves: 100,
    most: 90,
    mostHeight: 90,
    openingNeeded: 1.2,
  },
  {
    kind: "leaves-show-too-little",
    height: 130,
    width: 130,
    opening: 0.7,
    leaves: 100,
    most: 90,
    mostHeight: 90,
    openingNeeded: undefined,
  },
  { kind: "lost-leaf-outside", leaf: leafNumber(4), first: leafNumber(13), last: leafNumber(192) },
  { kind: "too-few-remain", lost: 9, leaves: 10 },
  {
    ...light,
    kind: "no-room-for-light",
    obstacle: { kind: "nowhere-wide", need: 40 },
    largest: { diameter: 30.5, height: 40 },
  },
  {
    ...light,
    kind: "no-room-for-light",
    obstacle: { kind: "level-absent", floor: 190 },
    largest: { diameter: 30, height: 0 },
  },
  {
    ...light,
    kind: "no-room-for-light",
    obstacle: { kind: "above-head", by: 3 },
    largest: { diameter: 0, height: 30 },
  },
  {
    ...light,
    kind: "no-room-for-light",
    obstacle: { kind: "little-paper", leaf: leafNumber(80), remaining: -2, least: 15 },
    largest: { diameter: 0, height: 0 },
  },
  { kind: "light-near-window", free: -1.3, clearance: 1, more: 2.5, panel: "wrap" },
  { kind: "light-near-window", free: 0.4, clearance: 1, more: 0.5, panel: "flat" },
  { kind: "outline-hidden", level: 1 },
  { kind: "hole-breaks", level: 1, lip: 14, closes: true, most: 12.9, least: 2 },
  { kind: "hole-breaks", level: 1, lip: 5, closes: false, most: 1.2, least: 2 },
  { kind: "no-hinge", level: 1, side: "left", shortest: 18, bulge: 4 },
  { kind: "no-hinge", level: 1, side: "right", shortest: 18, bulge: 4 },
  { kind: "glazing-too-small", level: 1, lip: 3, overlap: 1.5 },
];

const DOUBTS: readonly Doubt[] = [
  { kind: "caliper", caliper: 0.02, least: 0.04, most: 0.3, leaves: 399 },
  { kind: "caliper", caliper: 0.4, least: 0.04, most: 0.3, leaves: 60 },
  { kind: "unnumbered-leaves", lastPage: 200, unnumbered: 80, leaves: 200 },
  { kind: "springs-open", opening: 1, resting: 1.6 },
  { kind: "springs-open", opening: 1, resting: 7 },
  { kind: "coarse", leaves: 30, column: 3.74 },
  { kind: "out-of-shape", stretch: 1.05 },
  { kind: "out-of-shape", stretch: 0.9 },
  { kind: "narrow-floor", level: 3, width: 30, need: 40 },
  { kind: "light-wider-than-hole", diameter: 60, width: 55, height: 70 },
  { kind: "level-out-of-reach", level: 3, missing: 2 },
  { kind: "left-without-knife", light: true, window: true },
  { kind: "left-without-knife", light: true, window: false },
  { kind: "left-without-knife", light: false, window: true },
  { kind: "levels-left-out", levels: [2] },
  { kind: "levels-left-out", levels: [2, 3] },
  { kind: "striped", leaves: 88, of: 96 },
  { kind: "turns", leaves: 1, most: 2, every: 2 },
  { kind: "turns", leaves: 40, most: 3, every: 4 },
  { kind: "unseen-parts", parts: 1 },
  { kind: "unseen-parts", parts: 3 },
  { kind: "steep-creases", leaves: 1, reach: 70 },
  { kind: "steep-creases", leaves: 20, reach: 70 },
  { kind: "merged-spans", spans: 1, leaves: 1, leastTab: 3 },
  { kind: "merged-spans", spans: 23, leaves: 22, leastTab: 3 },
  { kind: "off-centre", unfolded: 1, before: 12, after: 13 },
  { kind: "off-centre", unfolded: 3, before: 13, after: 14 },
];

/** Keys of the front matter that are no word of the trade: whoever has no front matter must not meet them. */
const KEYS =
  /lastPage|pageOneLeaf|borderLeaves|pictureLeaves|lostLeaves|blockThickness|leafHeight|leafWidth|light\.[a-z]|insert|setback|"solve"|front matter|auto\b/;

const isSentence = /^[A-Z“\d].*[.!?]$/s;

describe("a failure told to a reader", () => {
  it.each(FAILURES)("says in whole sentences why and what would help: $kind", (failure) => {
    for (const telling of [MM, INCH]) {
      for (const text of [whyText(failure, telling), readerRemedy(failure, telling)]) {
        expect(text).toMatch(isSentence);
        expect(text).not.toMatch(KEYS);
        expect(text).not.toMatch(/undefined|NaN|\{|\}/);
        expect(text).not.toMatch(telling.units === "mm" ? /\d\sin\b/ : /\d\smm\b/);
      }
    }
  });
});

describe("a failure told to a teacher", () => {
  it.each(FAILURES)("names cells that the seats' table has: $kind", (failure) => {
    const text = teacherRemedy(failure, MM);
    expect(text).toMatch(isSentence);
    const cells = text.match(/\b[a-z]+[A-Z][A-Za-z]+\b/g) ?? [];
    const known: readonly string[] = [...OF_A_BOOK, ...FIT_COLUMNS];
    for (const cell of cells) expect(known.includes(cell), cell).toBe(true);
  });
});

describe("a failure told to the kit's author", () => {
  const schema: unknown = JSON.parse(
    readFileSync(join(import.meta.dirname, "../../content/kits/kit.schema.json"), "utf8"),
  );
  const has = (path: readonly (string | number)[]): boolean => {
    let at = schema as { properties?: Record<string, unknown>; items?: unknown } | undefined;
    for (const step of path) at = (typeof step === "number" ? at?.items : at?.properties?.[step]) as typeof at;
    return at !== undefined;
  };

  it.each(FAILURES)("has a field of the front matter, and short lower-case texts: $kind", (failure) => {
    const { path, given, allowed, remedy } = authorFailure(failure, MM);
    expect(has(path), path.join(".")).toBe(true);
    for (const text of [given, allowed, remedy]) {
      expect(text).toMatch(/^[a-z"\d]/);
      expect(text).not.toMatch(/undefined|NaN|[.;]$/);
    }
  });
});

describe("bounds in a failure", () => {
  it("are rounded to their safe side", () => {
    const flap = FAILURES.find((one) => one.kind === "flap-in-gutter")!;
    expect(readerRemedy(flap, MM)).toContain("37.5 mm");
    expect(readerRemedy(flap, INCH)).toContain("1 15/32 in");
    const wide = FAILURES.find((one) => one.kind === "picture-too-wide")!;
    expect(readerRemedy(wide, MM)).toContain("250 mm");
    const narrow = FAILURES.find((one) => one.kind === "picture-too-narrow")!;
    expect(readerRemedy(narrow, MM)).toContain("13.5 mm");
  });
});

describe("what is advised in a failure", () => {
  const off = {
    kind: "picture-off-leaf",
    height: 100,
    leafHeight: 178,
    heightSolved: false,
    headStated: true,
  } as const;
  const wide = {
    kind: "picture-too-wide",
    height: 300,
    width: 300,
    leaves: 100,
    widest: Math.PI,
    most: 3,
    mostHeight: -422,
  } as const;
  const little = {
    kind: "leaves-show-too-little",
    height: 130,
    width: 130,
    opening: 0.7,
    leaves: 100,
    most: 3,
    mostHeight: 3,
  } as const;
  const gutter = {
    kind: "flap-in-gutter",
    level: 1,
    depth: 12,
    reach: 24,
    leafWidth: 90,
    clearance: 100,
    foldStyle: "single",
  } as const;

  /** Heights can be stated from 5 mm, depths and lights from 1 and 5 mm, setbacks up to 100 mm (core/kit/bounds.ts). */
  it.each<[string, Failure, RegExp]>([
    ["no height below 5 mm", { ...off, head: 600, room: -422 }, /^lower the head, or choose a taller book$/],
    ["a height of 5 mm", { ...off, head: 173, room: 5 }, /^lower the height to at most 5 mm or the head/],
    ["leaves alone", { ...wide, enough: 150 }, /^use 150 picture leaves \(smaller borders\)$/],
    ["a book alone", { ...wide, enough: undefined }, /^choose a book with more or wider leaves$/],
    ["an opening alone", { ...little, openingNeeded: 1.2 }, /^open the book to 69°, or choose a book/],
    ["no opening either", { ...little, openingNeeded: undefined }, /^choose a book with more leaves$/],
    ["no fold of no depth", { ...gutter, deepest: -5 }, /^choose a wider book, or lower fit\.gutterClearance$/],
    [
      "no height that the leaf has no room for",
      {
        kind: "picture-too-narrow",
        height: 12,
        width: 12,
        leaves: 100,
        least: 13.3,
        leastHeight: Number.POSITIVE_INFINITY,
      },
      /^use fewer picture leaves$/,
    ],
    [
      "no setback of 130 mm",
      { kind: "light-near-window", free: -90, clearance: 1, more: 130, panel: "wrap" },
      /^use a narrower light$/,
    ],
    [
      "no light of 3 mm",
      {
        ...light,
        kind: "no-room-for-light",
        obstacle: { kind: "nowhere-wide", need: 40 },
        largest: { diameter: 3, height: 2 },
      },
      /^choose another region/,
    ],
  ])("can be stated: %s", (_, failure, remedy) => {
    expect(authorFailure(failure, MM).remedy).toMatch(remedy);
    for (const units of [MM, INCH]) {
      const others = [readerRemedy(failure, units), teacherRemedy(failure, units)].join(" ");
      expect(others).not.toMatch(/[-−]\d|\b[0-3](\.\d)? mm|undefined|NaN|Infinity|∞/);
      expect(others).toMatch(/\.$/);
    }
  });
});

describe("a doubt", () => {
  it.each(DOUBTS)("is said in whole sentences without keys of the front matter: $kind", (doubt) => {
    for (const telling of [MM, INCH]) {
      const text = doubtText(doubt, telling);
      expect(text).toMatch(isSentence);
      expect(text).not.toMatch(KEYS);
      expect(text).not.toMatch(/undefined|NaN|\{|\}|\b1 (strips|leaves|spans)\b/);
      if (doubt.kind !== "caliper") expect(text).not.toMatch(telling.units === "mm" ? /\d\sin\b/ : /\d\smm\b/);
      expect(authorDoubt(doubt, telling).startsWith(text)).toBe(true);
    }
  });

  it("tells the author what she can write", () => {
    expect(authorDoubt({ kind: "off-centre", unfolded: 3, before: 13, after: 14 }, MM)).toContain(
      "borderLeaves: [13, 14]",
    );
  });
});

describe("an offer", () => {
  const CHANGES: readonly OfferedChange[] = [
    { kind: "height", height: 105 },
    { kind: "opening", degrees: 120 },
    { kind: "borders", before: 14, after: 18 },
    { kind: "depths", depths: [10, 14, 20] },
    { kind: "folds", foldStyle: "stepped" },
    { kind: "folds", foldStyle: "single" },
    { kind: "folds", foldStyle: "corner" },
    { kind: "light-width", diameter: 30 },
    { kind: "light-height", height: 40 },
    { kind: "book", bound: "least", leaves: 240, thickness: 24 },
    { kind: "book", bound: "most", leaves: 120, thickness: 12 },
  ];

  it.each(CHANGES)("says what it changes, as a button does: $kind", (change) => {
    const text = offerText({ says: [change], springsOpen: false }, "mm");
    expect(text).toMatch(/^[A-Z].*[^.]$/);
    expect(text).not.toMatch(KEYS);
    for (const figure of Object.values(change).flat())
      if (typeof figure === "number") expect(text).toContain(String(figure));
    expect(offerText({ says: [change], springsOpen: true }, "mm")).toContain("beyond flat");
  });

  it("joins two that go together", () => {
    const text = offerText({ says: [CHANGES[3]!, CHANGES[0]!], springsOpen: false }, "mm");
    expect(text).toBe(
      "Make the levels shallower: 10\u00a0mm, 14\u00a0mm, 20\u00a0mm; also: make the picture 105\u00a0mm tall",
    );
  });
});
