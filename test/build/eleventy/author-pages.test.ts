import { describe, expect, it } from "vitest";
import { libraryData } from "../../../src/build/eleventy/page-data.ts";
import { holdSource, type PageSource, type WantedPages } from "../../../src/build/library/page-source.ts";

const ALL: WantedPages = { kits: ["moon"], authored: ["moon"], classes: [], guide: true, site: true, authors: true };

/** What pages are made from, as far as lists of pages look at it. */
function sourceOf(isServed: boolean, wanted: Partial<WantedPages> = {}): PageSource {
  return { isServed, wanted: { ...ALL, ...wanted }, classes: [], guide: [], settings: {} } as unknown as PageSource;
}

describe("libraryData(): pages for authors", () => {
  it("has them where the site is served to its author alone", () => {
    holdSource(sourceOf(true));
    expect(libraryData()).toMatchObject({ kits: ["moon"], authored: ["moon"], authors: ["author"] });
    holdSource(sourceOf(false));
    expect(libraryData()).toMatchObject({ kits: ["moon"], authored: [], authors: [] });
  });

  it("has the list of them beside them", () => {
    holdSource(sourceOf(true, { authors: false }));
    expect(libraryData()).toMatchObject({ authored: ["moon"], authors: [], site: ["site"] });
    holdSource(sourceOf(true, { authored: [] }));
    expect(libraryData()).toMatchObject({ authored: [], authors: ["author"], site: ["site"] });
  });
});
