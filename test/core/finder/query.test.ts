import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { bookFigures, restateBook } from "../../../src/core/finder/book-figures.ts";
import {
  NO_QUERY,
  type Query,
  readHours,
  fromQueryAddress as readQuery,
  toQueryAddress,
} from "../../../src/core/finder/query.ts";
import { fromAddress } from "../../../src/core/refit/address.ts";
import type { Refit } from "../../../src/core/refit/refit.ts";
import { fc } from "../../seed.ts";

const fromQueryAddress = (address: URLSearchParams) => readQuery(address).query;
/** A length in mm, with hundredths, that any book's height, width or thickness may be. */
const length = fc.integer({ min: 40_00, max: 200_00 }).map((hundredths) => hundredths / 100);
const optional = <T>(one: fc.Arbitrary<T>) => fc.option(one, { nil: undefined });
const queries: fc.Arbitrary<Query> = fc.record({
  book: fc.record(
    { leafHeight: length, leafWidth: length, blockThickness: length, leaves: fc.integer({ min: 4, max: 3000 }) },
    { requiredKeys: [] },
  ) as fc.Arbitrary<Query["book"]>,
  hours: optional(fc.integer({ min: 1, max: 3996 }).map((quarters) => quarters / 4)),
  levels: optional(fc.integer({ min: 2, max: 9 })),
  light: optional(fc.constantFrom("with" as const, "without" as const)),
  knife: optional(fc.constantFrom("without" as const, "made" as const)),
  fit: optional(fc.constantFrom("change" as const, "own" as const)),
  sort: optional(fc.constantFrom("title" as const, "hours" as const, "fit" as const)),
});

describe("toQueryAddress(query), fromQueryAddress(address)", () => {
  it("gives back every query that was written", () => {
    fc.assert(
      fc.property(queries, (query) => {
        expect(fromQueryAddress(new URLSearchParams(toQueryAddress(query).toString()))).toEqual(query);
      }),
    );
  });

  it("writes the book as kit pages read it", () => {
    fc.assert(
      fc.property(queries, (query) => {
        expect(fromAddress(new URLSearchParams(toQueryAddress(query))).refit).toEqual(query.book);
      }),
    );
  });

  it.each<[Partial<Query>, string]>([
    [{ book: { leafHeight: 210, leaves: 180 }, hours: 6, sort: "hours" }, "height=210&leaves=180&hours=6&sort=hours"],
    [{ levels: 3, light: "with", fit: "own" }, "levels=3&light=with&fit=own"],
    [{ book: { leafHeight: 210, depths: [3, 9] } }, "height=210"],
    [{ hours: 2.5 }, "hours=2.5"],
  ])("writes %j as %s", (query, address) => {
    expect(toQueryAddress({ ...NO_QUERY, ...query })).toBe(address);
  });

  it.each([
    ["hours=999", { hours: 999 }],
    ["hours=0.25", { hours: 0.25 }],
    ["levels=2", { levels: 2 }],
    ["levels=9", { levels: 9 }],
  ])("reads what is just within bounds: %s", (address, query) => {
    expect(fromQueryAddress(new URLSearchParams(address))).toEqual({ ...NO_QUERY, ...query });
  });

  it("writes nothing where nothing is asked", () => {
    expect(toQueryAddress(NO_QUERY).toString()).toBe("");
  });

  it.each([
    "hours=0",
    "hours=-2",
    "hours=1e3",
    "hours=1000",
    "hours=999.5",
    "levels=1",
    "levels=10",
    "levels=two",
    "light=candle",
    "fit=no",
    "sort=price",
    "height=tall",
    "depths=3_5",
    "picture=90",
    "__proto__=1",
  ])("leaves %s out", (address) => {
    expect(fromQueryAddress(new URLSearchParams(address))).toEqual(NO_QUERY);
  });
});

describe("fromQueryAddress(address), what it leaves out", () => {
  it("names each wish and each figure once, with what was given", () => {
    const { ignored, noWishes } = readQuery(
      new URLSearchParams("leaves=2&hours=0&levels=&light=candle&fit=own&sort=fit&sort=title&depths=3&utm=1"),
    );
    expect(ignored.map(({ field, given }) => [field.key, given])).toEqual([["leaves", "2"]]);
    expect(noWishes).toEqual([
      { wish: "hours", given: "0" },
      { wish: "levels", given: "" },
      { wish: "light", given: "candle" },
      { wish: "sort", given: "fit & title" },
    ]);
  });
});

describe("readHours(text)", () => {
  it.each([
    ["6", 6],
    [" 2.5 ", 2.5],
    ["2,5", 2.5],
    [".75", 0.75],
    ["", undefined],
    ["six", undefined],
    ["0", undefined],
    ["0.24", undefined],
    ["0.25", 0.25],
    ["6 h", undefined],
    ["-1", undefined],
  ])("%j: %s", (text, hours) => {
    expect(readHours(text)).toBe(hours);
  });
});

describe("bookFigures(refit), restateBook(book, written)", () => {
  const kept = { leafHeight: 210, leaves: 180, pageOneLeaf: leafNumber(3), lastPage: 340, direction: "rtl" } as const;

  it("leaves out what is a kit's own", () => {
    expect(bookFigures({ ...kept, depths: [3, 9], foldStyle: "single", lightDiameter: 30, units: "in" })).toEqual(kept);
  });

  it("leaves out what is not stated", () => {
    expect(bookFigures({ leafHeight: 210, leafWidth: undefined } as object as Refit)).toStrictEqual({
      leafHeight: 210,
    });
  });

  it("keeps plates with the count of leaves, and lets them go with it", () => {
    const plates = [{ afterPage: 20, leaves: 2 }];
    expect(restateBook({ leaves: 90, plates }, { leaves: 90 })).toEqual({ leaves: 90, plates });
    expect(restateBook({ leaves: 90, plates }, { leaves: 91 })).toEqual({ leaves: 91 });
    expect(restateBook({ plates }, { leaves: 91 })).toEqual({ leaves: 91 });
    expect(restateBook({ plates }, {})).toEqual({ plates });
    expect(restateBook({ leaves: 90, lastPage: 9 }, { leaves: 91, lastPage: 9 }, ["leaves", "lastPage"])).toEqual({
      leaves: 91,
      lastPage: 9,
    });
  });

  it.each([
    ["a corrected height keeps the page numbers", { leafHeight: 211, leaves: 180 }, { ...kept, leafHeight: 211 }],
    [
      "another count of leaves is another book",
      { leafHeight: 210, leaves: 90 },
      { leafHeight: 210, leaves: 90, direction: "rtl" },
    ],
    ["an emptied field is gone", { leaves: 180 }, { leaves: 180, pageOneLeaf: 3, lastPage: 340, direction: "rtl" }],
  ])("%s", (_, written, book) => {
    expect(restateBook(kept, written)).toEqual(book);
  });
});
