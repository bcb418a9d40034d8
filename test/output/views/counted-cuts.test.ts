import { describe, expect, it } from "vitest";
import { viewKit } from "../../../src/output/views/kit-view.ts";
import { FIXTURES, fixtureFolder, readKit } from "../../input/kit/kit-folders.ts";

// At a coarser ruler marks fall together: what a page counts is what its table lists, in either system of units.
describe("the cuts that a kit's page counts", () => {
  it.each(
    ["evening-boat", "harbour-moon", "little-gull"].flatMap((slug) =>
      (["mm", "in"] as const).map((units) => [slug, units] as const),
    ),
  )("are those of its table: %s in %s", (slug, units) => {
    const computed = readKit(fixtureFolder(slug), FIXTURES);
    const view = viewKit({ ...computed, kit: { ...computed.kit, units } }, []);
    const listed = view.shown.leaves.reduce((sum, { cuts }) => sum + cuts.length, 0);
    expect(view.counts.cuts).toBe(listed);
    expect(JSON.stringify(view.figures.key)).toContain(`"${listed}"`);
  });
});
