import { describe, expect, it } from "vitest";
import { KIT_PARTS } from "../../../src/output/parts/kit-parts.ts";
import { stepsPart } from "../../../src/output/parts/steps.ts";
import { FIXTURE_KITS } from "../../input/kit/kit-folders.ts";
import { fixtureView } from "../feeds/made-kits.ts";

describe("a drawing that a kit's page shows twice", () => {
  it.each(FIXTURE_KITS)("%s: is written once, and each repeat leads to the same drawing", (slug) => {
    const view = fixtureView(slug);
    const parts = Object.values(KIT_PARTS).map((part) => String(part(view)));
    const page = parts.join("");
    const repeats = [...page.matchAll(/<svg([^>]*)><use href="#([\w-]+)"\/><\/svg>/g)];
    expect(repeats.length).toBeGreaterThan(0);
    for (const [, head, id] of repeats) {
      const whole = page.split(`<g id="${id}">`);
      expect(whole).toHaveLength(2);
      // The frame and the words are the same, and in the steps of a packet the drawing stands whole.
      expect(whole[0]!.endsWith(`<svg${head}>`)).toBe(true);
      const drawing = whole[1]!.slice(0, whole[1]!.indexOf("</g></svg>"));
      expect(String(stepsPart(view))).toContain(`<svg${head}>${drawing}</svg>`);
    }
  });
});
