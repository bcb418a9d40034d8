import { describe, expect, it } from "vitest";
import type { LevelSeen, SeenPicture } from "../../../src/core/makeability/kept-levels.ts";
import { keptPart } from "../../../src/output/parts/kept.ts";
import { kitPage } from "../../../src/output/parts/kit-page.ts";
import { raw } from "../../../src/output/parts/markup.ts";
import { madeKit } from "../../core/kit/made-kit.ts";
import { fixtureView } from "../feeds/made-kits.ts";

/** A level of 1000 mm² of which so much is lost. */
const level = (number: number, hidden: number, unreached = 0): LevelSeen => ({
  level: number,
  wanted: 1000,
  kept: 1000 - hidden - unreached,
  hidden,
  unreached,
  changed: 0,
  share: (1000 - hidden - unreached) / 1000,
  hiddenAt: [],
});
const picture = (...levels: readonly LevelSeen[]): SeenPicture => ({ levels, lost: [] });
const told = (seen: SeenPicture | undefined): string => String(keptPart(madeKit(), seen) || "");

// Shares worked out by hand from 1000 mm² a level; the made kit's levels are called square and wall.
describe("keptPart(kit, seen)", () => {
  it("names each level that is not seen whole, and what hides it", () => {
    const words = told(picture(level(1, 0), level(2, 210)));
    expect(words).toContain("From the front you see 79% of wall as drawn.");
    expect(words).toContain("Sides of prouder leaves hide parts of deeper levels");
    expect(words).not.toContain("do not reach");
  });

  it("tells what deep folds do not reach", () => {
    const words = told(picture(level(1, 10), level(2, 0, 90)));
    expect(words).toContain("99% of square and 91% of wall");
    expect(words).toContain("deep folds do not reach all the way");
    expect(words).not.toContain("Sides of prouder leaves");
  });

  it("says nothing where all is seen, and of a piece that has no front", () => {
    expect(told(picture(level(1, 4), level(2, 0)))).toBe("");
    expect(told(undefined)).toBe("");
  });

  it("stands on the page of the kit's own book alone", () => {
    const view = fixtureView("little-gull");
    const words = raw("<p>79% of sky</p>");
    expect(String(kitPage(view, raw(""), { kept: words }))).toMatch(/<div data-own-packets><p>79% of sky<\/p>/);
  });
});
