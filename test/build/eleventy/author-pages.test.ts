import { afterEach, describe, expect, it } from "vitest";
import { libraryData } from "../../../src/build/eleventy/page-data.ts";
import { holdLibrary } from "../../../src/build/library/current-library.ts";
import type { Library } from "../../../src/build/library/library.ts";

const MODE = "ELEVENTY_RUN_MODE";
const before = process.env[MODE];

/** A library of one kit, as far as lists of pages look at it. */
const LIBRARY = { views: [{ slug: "moon" }], classes: [], guide: [], settings: {} } as unknown as Library;

describe("libraryData(): pages for authors", () => {
  afterEach(() => {
    if (before === undefined) delete process.env[MODE];
    else process.env[MODE] = before;
  });

  it.each([
    ["serve", ["moon"], ["author"]],
    ["watch", ["moon"], ["author"]],
    ["build", [], []],
    [undefined, [], []],
  ] as const)("in the mode %s", (mode, authored, authors) => {
    if (mode === undefined) delete process.env[MODE];
    else process.env[MODE] = mode;
    holdLibrary(LIBRARY);
    expect(libraryData()).toMatchObject({ kits: ["moon"], authored, authors });
  });
});
