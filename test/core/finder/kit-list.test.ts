import { describe, expect, it } from "vitest";
import {
  type KitEntry,
  type Known,
  listKits,
  minutesOf,
  type Near,
  sortOf,
  wantsAsked,
} from "../../../src/core/finder/kit-list.ts";
import { NO_QUERY, type Query } from "../../../src/core/finder/query.ts";
import { OFFER } from "../refit/made-offer.ts";

const kit = (title: string, hours: number, levels: number, light: boolean): KitEntry => ({
  slug: title.toLowerCase(),
  title,
  minutes: hours * 60,
  levels,
  light,
});

const KITS = [kit("Buoy", 6, 3, false), kit("Anchor", 9, 3, true), kit("Crane", 3, 2, false), kit("Dory", 5, 5, true)];
const offers = [OFFER];
const VERDICTS = new Map<string, Known>([
  ["buoy", { kind: "no", failure: { kind: "outline-hidden", level: 1 } }],
  ["anchor", { kind: "fits", minutes: 4 * 60, reasons: [] }],
  ["crane", { kind: "change", offers, minutes: 2 * 60 }],
  ["dory", { kind: "unknown", cause: "not-loaded" }],
]);
const NONE = new Map<string, Known>();
const book = { leafHeight: 200 };

const sought = (verdicts: ReadonlyMap<string, Known>, query: Partial<Query>, near = new Map<string, Near>()) => ({
  kits: KITS,
  verdicts,
  near,
  query: { ...NO_QUERY, ...query },
});

describe("listKits(kits, verdicts, query)", () => {
  const CASES: readonly (readonly [string, Partial<Query>, ReadonlyMap<string, Known>, string])[] = [
    ["nothing asked: by title", {}, NONE, "Anchor Buoy Crane Dory"],
    ["by hours of their own books", { sort: "hours" }, NONE, "Crane Dory Buoy Anchor"],
    ["by hours in the reader's book where known", { book, sort: "hours" }, VERDICTS, "Crane Anchor Dory Buoy"],
    ["a book: what fits first", { book }, VERDICTS, "Anchor Crane Buoy Dory"],
    ["a book, by title", { book, sort: "title" }, VERDICTS, "Anchor Buoy Crane Dory"],
    ["by fit without a book: by title", { sort: "fit" }, NONE, "Anchor Buoy Crane Dory"],
    ["at most 5 hours", { hours: 5 }, NONE, "Crane Dory"],
    ["at most 5 hours in the reader's book", { book, hours: 5 }, VERDICTS, "Anchor Crane Dory"],
    ["three levels", { levels: 3 }, NONE, "Anchor Buoy"],
    ["with a light", { light: "with" }, NONE, "Anchor Dory"],
    ["without a light", { light: "without" }, NONE, "Buoy Crane"],
    ["fits as it is or with a change", { book, fit: "change" }, VERDICTS, "Anchor Crane"],
    ["fits as it is", { book, fit: "own" }, VERDICTS, "Anchor"],
    ["fit counts only with a book", { fit: "own" }, NONE, "Anchor Buoy Crane Dory"],
    ["all wishes at once", { book, levels: 2, light: "without", hours: 2, fit: "change" }, VERDICTS, "Crane"],
    ["nothing is left", { levels: 9 }, NONE, ""],
  ];
  it.each(CASES)("%s", (_, query, verdicts, titles) => {
    const listed = listKits(sought(verdicts, query), "en");
    expect(listed.map((one) => one.title).join(" ")).toBe(titles);
  });

  it("stands what must be checked after what fits, and before what must be changed", () => {
    const check: Known = { kind: "check", minutes: 60, reasons: [] };
    const verdicts = new Map<string, Known>([
      ["buoy", { kind: "unknown", cause: "failed" }],
      ["anchor", { kind: "change", offers, minutes: 60 }],
      ["crane", check],
      ["dory", { kind: "fits", minutes: 60, reasons: [] }],
    ]);
    const titles = (query: Partial<Query>) =>
      listKits(sought(verdicts, { book, ...query }), "en").map((one) => one.title);
    expect(titles({})).toEqual(["Dory", "Crane", "Anchor", "Buoy"]);
    expect(titles({ fit: "own" })).toEqual(["Dory", "Crane"]);
    expect(titles({ fit: "change" })).toEqual(["Dory", "Crane", "Anchor"]);
  });

  it("puts kits that were not asked yet before those that cannot be made", () => {
    const verdicts = new Map<string, Known>([
      ["anchor", { kind: "no", failure: { kind: "outline-hidden", level: 1 } }],
      ["dory", { kind: "poor", minutes: 60, reasons: [] }],
    ]);
    const titles = listKits(sought(verdicts, { book }), "en").map((one) => one.title);
    expect(titles).toEqual(["Dory", "Buoy", "Crane", "Anchor"]);
  });

  it("puts of those that fit alike the one first whose own book is like the reader's, and before it what has less against it", () => {
    const fits = { kind: "fits", minutes: 60, reasons: [] } as const;
    const verdicts = new Map<string, Known>([
      ["anchor", fits],
      ["buoy", fits],
      ["crane", { kind: "change", offers: [{ ...OFFER, quality: "check" }], minutes: 60 }],
      ["dory", { kind: "change", offers: [{ ...OFFER, quality: "fits" }], minutes: 60 }],
    ]);
    const near = new Map([
      ["anchor", { lies: true, farness: 0.4 }],
      ["buoy", { lies: true, farness: 0.1 }],
      ["crane", { lies: false, farness: 0.1 }],
      ["dory", { lies: false, farness: 0.9 }],
    ]);
    const titles = listKits(sought(verdicts, { book }, near), "en").map((one) => one.title);
    expect(titles).toEqual(["Buoy", "Anchor", "Dory", "Crane"]);
  });

  it.each([
    [0, 15],
    [7, 15],
    [22, 15],
    [22.5, 30],
    [52, 45],
  ])("counts %d minutes as %d, a quarter at least", (minutes, shown) => {
    expect(minutesOf({ ...kit("Eel", 0, 2, false), minutes }, NONE)).toBe(shown);
  });

  it("leaves the given list as it is", () => {
    const given = [...KITS];
    listKits({ ...sought(NONE, {}), kits: given }, "en");
    expect(given).toEqual(KITS);
  });

  it("counts hours as the card shows them, to the quarter", () => {
    const long = { ...kit("Eel", 0, 2, false), minutes: 5 * 60 + 7 };
    expect(minutesOf(long, NONE)).toBe(300);
    expect(listKits({ ...sought(NONE, { hours: 5 }), kits: [long] }, "en")).toEqual([long]);
  });
});

describe("sortOf(query)", () => {
  it.each([
    [{}, "title"],
    [{ book }, "fit"],
    [{ book, sort: "hours" as const }, "hours"],
  ])("%j: %s", (query, sort) => {
    expect(sortOf({ ...NO_QUERY, ...query })).toBe(sort);
  });
});

describe("wantsAsked(sought, most)", () => {
  const near = new Map([
    ["anchor", { lies: false, farness: 0 }],
    ["buoy", { lies: true, farness: 0.5 }],
    ["crane", { lies: true, farness: 0.2 }],
    ["dory", { lies: false, farness: 0.1 }],
  ]);
  const no: Known = { kind: "no", failure: { kind: "outline-hidden", level: 1 } };
  const asked = (verdicts: ReadonlyMap<string, Known>, query: Partial<Query>, most: number) =>
    wantsAsked(sought(verdicts, { book, ...query }, near), most).map(({ title }) => title);

  it("asks those first in whose book the picture lies, the nearest book first", () => {
    expect(asked(NONE, {}, 9)).toEqual(["Crane", "Buoy", "Anchor", "Dory"]);
    expect(asked(NONE, {}, 3)).toEqual(["Crane", "Buoy", "Anchor"]);
  });

  it("asks none that is known, ruled out or not wished for, and counts those that were asked", () => {
    expect(asked(new Map([["crane", no]]), {}, 9)).toEqual(["Buoy", "Anchor", "Dory"]);
    expect(asked(new Map([["crane", no]]), {}, 1)).toEqual(["Buoy"]);
    expect(asked(new Map([["crane", VERDICTS.get("anchor")!]]), {}, 2)).toEqual(["Buoy"]);
    expect(asked(NONE, { light: "with" }, 9)).toEqual(["Anchor", "Dory"]);
    expect(asked(VERDICTS, {}, 9)).toEqual([]);
  });
});

describe("kits without a knife", () => {
  // The herring is made for it, the moon with its light can be folded, too, in three hours; the maze cannot.
  const herring = { ...kit("Herring", 2, 1, false), madeToFold: true, folded: 120 };
  const moon = { ...kit("Moon", 9, 3, true), folded: 180 };
  const maze = kit("Maze", 4, 2, false);
  const names = (query: Partial<Query>) =>
    listKits({ ...sought(NONE, query), kits: [maze, moon, herring] }, "en").map(({ title }) => title);

  it("are those that can be folded, or only those made for it", () => {
    expect(names({})).toEqual(["Herring", "Maze", "Moon"]);
    expect(names({ knife: "without" })).toEqual(["Herring", "Moon"]);
    expect(names({ knife: "made" })).toEqual(["Herring"]);
  });

  it("take the hours of folding, and have no light", () => {
    expect(minutesOf(moon, NONE)).toBe(540);
    expect(minutesOf(moon, NONE, "without")).toBe(180);
    expect(names({ knife: "without", hours: 3 })).toEqual(["Herring", "Moon"]);
    expect(names({ knife: "without", light: "with" })).toEqual([]);
    expect(names({ knife: "without", light: "without" })).toEqual(["Herring", "Moon"]);
  });
});
