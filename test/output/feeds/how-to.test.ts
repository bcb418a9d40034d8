import * as tinyduration from "tinyduration";
import { describe, expect, it } from "vitest";
import { dataBlock, howTo } from "../../../src/output/feeds/how-to.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView, SITE, settingsWith, version } from "./made-kits.ts";
import { readVocabulary } from "./vocabulary.ts";
import { vocabularyFaults } from "./vocabulary-faults.ts";

// biome-ignore lint/suspicious/noExplicitAny: a document of any shape, looked into freely
type Json = any;

const vocabulary = readVocabulary();

/** As a reader of the page gets it. */
function published(...given: Parameters<typeof howTo>): Json {
  return JSON.parse(dataBlock(howTo(...given)));
}

const minutesOf = (duration: string): number => {
  const { days = 0, hours = 0, minutes = 0 } = tinyduration.parse(duration);
  return (24 * days + hours) * 60 + minutes;
};

describe("the vocabulary's own reader", () => {
  it("knows what belongs where", () => {
    expect(vocabulary.hasProperty("HowTo", "supply")).toBe(true);
    expect(vocabulary.hasProperty("HowToSupply", "requiredQuantity")).toBe(true);
    expect(vocabulary.hasProperty("HowToTool", "estimatedCost")).toBe(false);
    expect(vocabulary.supersededBy("steps")).toBe("step");
    expect(vocabularyFaults({ "@type": "HowTo", steps: "x", pages: 3, tool: { "@type": "Person" } })).toHaveLength(3);
  });
});

describe("howTo(view, settings)", () => {
  const SETTINGS = settingsWith({ author: { name: "Quay workshop" } });

  it.each(FIXTURE_KITS)("%s: uses types and properties of schema.org only, each where it belongs", (slug) => {
    const prices = { currency: "EUR", prices: { book: 2, card: 0.4 } };
    const stated = { versions: [version("1.1", "2026-10-03")], licence: { name: "Own", url: undefined } };
    for (const fields of [{}, prices, { ...prices, ...stated, currency: "crowns" }])
      expect(vocabularyFaults(published(fixtureView(slug, fields), SETTINGS))).toEqual([]);
    expect(vocabularyFaults(published(fixtureView(slug), { ...SETTINGS, url: undefined, author: undefined }))).toEqual(
      [],
    );
  });

  // schema.org: totalTime includes the time to prepare.
  it.each(FIXTURE_KITS)("%s: takes in all at least as long as its preparation and performance", (slug) => {
    const view = fixtureView(slug);
    const { totalTime, prepTime, performTime } = published(view, SETTINGS);
    expect(minutesOf(totalTime)).toBeGreaterThanOrEqual(minutesOf(prepTime) + minutesOf(performTime));
    expect(Math.abs(minutesOf(totalTime) - view.effort.minutes)).toBeLessThanOrEqual(0.5);
    expect(minutesOf(prepTime)).toBeGreaterThan(0);
  });

  /*
   * By hand, in the order of the trade (nothing is used before it is made, glued things dry before the door is hung): each step
   * with the cautions that what is done in it calls for: a knife, glue, a flame's place, a cell.
   */
  it("has the page's steps in order, in sections, each with its direction and its cautions", () => {
    const { step } = published(fixtureView("harbour-moon"), SETTINGS);
    expect(step.map((section: Json) => section.name)).toEqual(["The book", "Light and window"]);
    const steps = step.flatMap((section: Json) => section.itemListElement);
    const tips = (one: Json) => one.itemListElement.slice(1).map((tip: Json) => tip.text.split(/[:.]/)[0]);
    expect(steps.map((one: Json) => [one.name, ...tips(one)])).toEqual([
      ["Check the book", "Whose hands"],
      ["Find pattern page 1"],
      ["Make the gauge"],
      ["Press the score lines"],
      ["Fold the leaves before the picture"],
      ["Fold the picture, batch by batch", "Blades", "Eyes and back"],
      ["In each batch: notch for the light", "Blades"],
      ["In each batch: tack loose flaps", "Glue"],
      ["Fold the leaves after the picture"],
      ["Cut out the window", "Blades"],
      ["Open to the hold width"],
      ["Glue the base frame and let it dry"],
      ["Glaze the door"],
      ["Decorate in layers"],
      ["Hang the door"],
      ["Close it"],
      ["Set the light", "Light, never flame", "Coin cells"],
    ]);
    for (const [i, one] of steps.entries()) {
      expect(one.url).toBe(`${SITE}kits/harbour-moon/#step-${i + 1}`);
      expect(one.itemListElement[0]["@type"]).toBe("HowToDirection");
      expect(one.itemListElement[0].text.length).toBeGreaterThan(40);
    }
  });

  it("speaks in the kit's units", () => {
    const [book] = published(fixtureView("tide-and-lamp"), SETTINGS).step;
    expect(book.itemListElement[0].itemListElement[0].text).toMatch(/5\s1\/4\sin/);
  });

  // schema.org: supply is consumed, tool is not.
  it("tells what is used up from what stays, with quantities and stated prices", () => {
    const view = fixtureView("harbour-moon", { prices: { book: 2, card: 0.35 }, currency: "EUR" });
    const { supply, tool, estimatedCost } = published(view, SETTINGS);
    expect([...supply, ...tool].map((one: Json) => one.name).sort()).toEqual(
      view.supplies.map((one) => one.item).sort(),
    );
    const card = supply.find((one: Json) => one.name === "card");
    expect(card.requiredQuantity).toEqual({ "@type": "QuantitativeValue", value: 2, unitText: "sheets" });
    expect(card.estimatedCost).toEqual({ "@type": "MonetaryAmount", currency: "EUR", value: 0.7 });
    expect(estimatedCost).toEqual({ "@type": "MonetaryAmount", currency: "EUR", value: 2.7 });
    expect(supply.find((one: Json) => one.name === "string")).not.toHaveProperty("estimatedCost");
    expect(tool.map((one: Json) => one.name)).toContain("craft knife");
  });

  it("writes a currency that is no code as the author writes it", () => {
    const view = fixtureView("little-gull", { prices: { book: 2 }, currency: "crowns" });
    expect(published(view, SETTINGS).estimatedCost).toBe("2.00 crowns");
    expect(published(fixtureView("little-gull"), SETTINGS)).not.toHaveProperty("estimatedCost");
  });

  it("states version, days, licence, credit and author", () => {
    const versions = [version("1.1", "2026-10-03"), version("1.0", "2026-02-07")];
    const boat = fixtureView("evening-boat", {
      versions,
      licence: { name: "MIT", url: "https://licences.example.org/" },
    });
    expect(published(boat, SETTINGS)).toMatchObject({
      "@context": "https://schema.org",
      version: "1.1",
      dateModified: "2026-10-03",
      datePublished: "2026-02-07",
      license: "https://licences.example.org/",
      creditText: "Picture after Sailboat (fill), Phosphor Icons, licence MIT",
      author: { "@type": "Organization", name: "Quay workshop" },
      inLanguage: "en",
    });
    const bare = published(fixtureView("little-gull", { versions: [], licence: undefined }), SETTINGS);
    for (const key of ["version", "dateModified", "license", "creditText"]) expect(bare).not.toHaveProperty(key);
  });

  it("has addresses of the site, or without one relative to the page", () => {
    const view = fixtureView("little-gull");
    expect(published(view, SETTINGS).image).toEqual([`${SITE}kits/little-gull/social.jpg`]);
    const { url: _, ...nowhere } = SETTINGS;
    const relative = published(view, nowhere);
    expect(relative.image).toEqual(["social.jpg"]);
    expect(relative.step[0].itemListElement[0].url).toBe("#step-1");
    expect(relative).not.toHaveProperty("url");
  });
});

describe("dataBlock(data)", () => {
  it("cannot end the element that it stands in, and reads as it was", () => {
    const data = { name: "</script><!--<script>", text: "a < b & c" };
    expect(dataBlock(data)).not.toContain("<");
    expect(JSON.parse(dataBlock(data))).toEqual(data);
  });
});
