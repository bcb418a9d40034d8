import { describe, expect, it } from "vitest";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { failureOf } from "../../core/pattern/computed.ts";
import { FIXTURE_KITS, fixtureKit } from "../../input/kit/kit-folders.ts";

const KITS = FIXTURE_KITS.map((slug) => [slug, fixtureKit(slug)] as const);

// Common practice, no source: a leaf is folded from the front level inward, so each level must lie deeper than the one before.
describe("levels of a reader's book", () => {
  it.each(KITS)("%s: a level that lies before the one in front of it is a failure, not a pattern", (_, kit) => {
    const depths = kit.levels.map((level) => level.depth);
    const swapped = [depths[1]!, depths[0]!, ...depths.slice(2)];
    expect(failureOf(refitKit(kit, { depths: swapped }))).toEqual({
      kind: "levels-out-of-order",
      level: 2,
      depth: depths[0],
      before: depths[1],
    });
    expect(failureOf(refitKit(kit, { depths: depths.map(() => depths[0]!) })).kind).toBe("levels-out-of-order");
  });
});

describe("the greatest height that a failure advises", () => {
  it.each(KITS)("%s: lies on the leaf, below the head", (_, kit) => {
    for (const leafHeight of [80, 105, 150]) {
      const asked = refitKit(kit, { leafHeight, height: 900 });
      const failure = failureOf(asked);
      if (!("mostHeight" in failure)) continue;
      expect(failure.mostHeight).toBeLessThanOrEqual(leafHeight - Math.max(0, asked.fit.head ?? 0));
    }
    expect.hasAssertions();
  });
});
