import { describe, expect, it } from "vitest";
import { ASKED } from "../../../src/core/finder/book-figures.ts";
import { fromQueryAddress } from "../../../src/core/finder/query.ts";
import { finderPart } from "../../../src/output/parts/finder.ts";

const CATALOGUE = String(finderPart({ kind: "catalogue", units: "mm" }));
const CLASS = String(finderPart({ kind: "class", units: "in" }));

function choices(name: string): string[] {
  const select = new RegExp(`<select id="find-${name}".*?</select>`, "s").exec(CATALOGUE)![0];
  return [...select.matchAll(/<option value="([^"]*)">/g)].map(([, value]) => value!);
}

describe("finderPart(place)", () => {
  it("asks for the figures of a book in order, each with its help", () => {
    const asked = [...CATALOGUE.matchAll(/<input id="find-(\w+)" name="\1".*?aria-describedby="find-\1-help"/g)];
    expect(asked.map(([, name]) => name)).toEqual([...ASKED, "hours"]);
    for (const name of ASKED) expect(CATALOGUE).toMatch(new RegExp(`<p class="help" id="find-${name}-help">[^<]+</p>`));
  });

  it.each(["levels", "light", "fit", "sort"] as const)(
    "offers for %s nothing asked, and what an address can ask for",
    (name) => {
      const [none, ...values] = choices(name);
      expect(none).toBe("");
      expect(values.length).toBeGreaterThan(1);
      for (const value of values)
        expect(String(fromQueryAddress(new URLSearchParams({ [name]: value })).query[name])).toBe(value);
    },
  );

  it("is closed above the catalogue; above a class it is open, without wishes and in the class's units", () => {
    expect(CATALOGUE).toMatch(/^<details class="finder" data-finder hidden>/);
    expect(CATALOGUE).toContain('value="mm" checked');
    expect(CLASS).toMatch(/^<details class="finder" data-finder open hidden>/);
    expect(CLASS).toContain('value="in" checked');
    expect(CLASS).toContain("<fieldset hidden><legend>The work");
    expect(CATALOGUE).not.toContain("<fieldset hidden>");
  });
});
