import { describe, expect, it } from "vitest";
import { makePage } from "../../../src/output/parts/make-page.ts";
import { makeBook, suppliesToTick, supplyTick } from "../../../src/output/parts/make-parts.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView } from "../feeds/made-kits.ts";

describe("makePage(view)", () => {
  it.each(FIXTURE_KITS)("holds every step once, numbered as on the kit's page, and every supply: %s", (slug) => {
    const view = fixtureView(slug);
    const page = String(makePage(view));
    for (const [i, { title }] of view.steps.entries()) {
      expect(page.split(`id="step-${i + 1}"`)).toHaveLength(2);
      expect(page).toContain(`<h3>${title}`);
    }
    const starts = [...page.matchAll(/<ol class="steps" start="(\d+)">(.*?)<\/ol>/gs)];
    let number = 1;
    for (const [, start, items] of starts) {
      expect(Number(start)).toBe(number);
      number += items!.split("<li id=").length - 1;
    }
    expect(number).toBe(view.steps.length + 1);
    expect(page.match(/data-tick="/g)).toHaveLength(view.supplies.length);
    expect(page).not.toMatch(/undefined|\[object|>(null|true|false|NaN)</);
  });

  it("leads without scripts to the table and to the drawings on the kit's page, and has none itself", () => {
    const page = String(makePage(fixtureView("little-gull")));
    expect(page).toMatch(/<noscript>.*href="\.\.\/index\.html#steps".*href="\.\.\/index\.html#pattern"/);
    expect(page).not.toContain("<svg");
  });
});

describe("what a piece needs", () => {
  const { supplies, kit } = fixtureView("harbour-moon");

  it("is told apart by names of their own, and ticked by them", () => {
    const names = supplies.map(supplyTick);
    expect(new Set(names).size).toBe(names.length);
    const ticked = String(suppliesToTick(supplies, [names[2]!]));
    expect(ticked.match(/ checked/g)).toHaveLength(1);
    expect(ticked).toContain(`data-tick="${names[2]}" checked`);
  });

  it("says the book in the units that are asked for", () => {
    expect(makeBook(kit.book, "mm").replaceAll("\u00a0", " ")).toBe(
      "In a book of 204 leaves, 216 mm tall, 140 mm wide, 24 mm thick.",
    );
    expect(makeBook(kit.book, "in")).toContain("8 1/2");
  });
});
