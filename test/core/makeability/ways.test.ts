import { describe, expect, it } from "vitest";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { AuthorChange } from "../../../src/core/makeability/change.ts";
import type { Makeability } from "../../../src/core/makeability/makeability.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import { FIXTURE_KITS, fixtureKit as readFixture } from "../../input/kit/kit-folders.ts";
import { fc } from "../../seed.ts";
import { madeKit } from "../kit/made-kit.ts";
import { fitting, lookedAt, seenBy } from "./assessed.ts";

const read = new Map<string, Makeability>();

/** A fixture as it is looked at; each once. */
function lookedFixture(slug: string): Makeability {
  const found = read.get(slug) ?? lookedAt(readFixture(slug));
  read.set(slug, found);
  return found;
}

/** A kit with a change, as an author would write it; undefined for changes of the picture. */
function written(kit: Kit, change: AuthorChange): Kit | undefined {
  switch (change.kind) {
    case "height": {
      const head = kit.fit.head! + change.height <= kit.book.leafHeight ? kit.fit.head : undefined;
      return { ...kit, fit: { ...kit.fit, head, shape: { ...kit.fit.shape, height: change.height } as never } };
    }
    case "borders":
      return { ...kit, fit: { ...kit.fit, borderLeaves: [change.before, change.after] } };
    case "depths":
      return { ...kit, levels: kit.levels.map((level, k) => ({ ...level, depth: change.depths[k]! })) };
    case "opening": {
      const opening = (change.degrees * Math.PI) / 180;
      return { ...kit, fit: { ...kit.fit, shape: { ...kit.fit.shape, opening } as never } };
    }
    default:
      return undefined;
  }
}

/** The figure of a trouble, worked out from the pattern alone. */
function figureIn(kit: Kit, trouble: Makeability["troubles"][number]["trouble"]): number {
  const { pattern, findings } = fitting(kit);
  switch (trouble.kind) {
    case "hidden": {
      const { hidden, wanted } = seenBy(kit, "far").levels[trouble.level - 1]!;
      return hidden / wanted;
    }
    case "out-of-reach": {
      const doubt = findings.find((one) => one.kind === "level-out-of-reach" && one.level === trouble.level);
      return doubt?.kind === "level-out-of-reach" ? doubt.missing : 0;
    }
    case "slivers":
      return mergedShare(pattern);
    case "many-cuts":
      return pattern.leaves.filter(({ cuts }) => cuts.length > 8).length;
    case "springs-open":
      return Math.max(0, pattern.fit.restingOpening - pattern.fit.opening);
    case "narrow":
      throw new Error("is not in the pattern");
  }
}

/** Merged strips by their length, each as wide as the columns from its left to its right neighbour's tip, halved. */
function mergedShare({ merged, leaves, fit }: Pattern): number {
  const xOf = (leaf: number): number => leaves.find((one) => one.leaf === leaf)!.x[0]!;
  const area = merged.reduce((sum, { leaf, from, to }) => {
    const width = Math.abs(xOf(Math.min(fit.lastLeaf, leaf + 1)) - xOf(Math.max(fit.firstLeaf, leaf - 1))) / 2;
    return sum + width * (to - from);
  }, 0);
  return area / (fit.width * fit.height);
}

describe("ways out", () => {
  it.each(FIXTURE_KITS)("of %s fit, and have the figures that the pattern has", (slug) => {
    const kit = readFixture(slug);
    const { troubles, seen } = lookedFixture(slug);
    for (const { trouble, ways } of troubles) {
      expect(ways.length).toBeLessThanOrEqual(3);
      if (trouble.kind === "slivers" && seen) {
        const { changed, wanted } = seen.levels[trouble.most - 1]!;
        expect(trouble.share).toBeLessThanOrEqual(changed / wanted + 1e-9);
      }
      if (trouble.kind !== "narrow") expect(trouble.figure).toBeCloseTo(figureIn(kit, trouble), 4);
      for (const { change, before, after } of ways) {
        expect(before).toBe(trouble.figure);
        expect(after).toBeLessThanOrEqual(0.8 * before);
        const changed = written(kit, change);
        if (changed && trouble.kind !== "narrow") expect(after).toBeCloseTo(figureIn(changed, trouble), 4);
      }
    }
  });

  it("are told for a deep well at the flanks: nearer levels hide less of it", () => {
    const { troubles } = lookedFixture("harbour-moon");
    const hidden = troubles.find(({ trouble }) => trouble.kind === "hidden")!;
    expect(hidden.trouble).toMatchObject({ level: 3 });
    expect(hidden.ways.map(({ change }) => change.kind)).toContain("depths");
  });

  it("are not sought against merged strips that are too few to see", () => {
    const { trouble, ways } = lookedFixture("little-gull").troubles.find(
      ({ trouble: { kind } }) => kind === "slivers",
    )!;
    expect(trouble.figure).toBeLessThan(0.005);
    expect(ways).toEqual([]);
  });

  it("that smooth the outlines merge less, and never smooth a narrow part away", () => {
    const ripple = fc.array(fc.integer({ min: -15, max: 15 }), { minLength: 160, maxLength: 160 });
    const offered = new Set<string>();
    fc.assert(
      fc.property(ripple, (tenths) => {
        const { troubles } = lookedAt(madeKit({ picture: rippledBars(tenths), fit: { markStep: 0.5 } }));
        for (const { trouble, ways } of troubles)
          for (const { change, before, after } of ways)
            if (change.kind === "simplify") {
              offered.add(trouble.kind);
              expect(after).toBeLessThan(before);
            }
      }),
      { numRuns: 6 },
    );
    expect(offered).toContain("slivers");
    expect(offered).not.toContain("narrow");
  });
});

/**
 * Four upright bars in a square of 100 that is 40 mm high on the book, with twenty ripples down each side: a leaf that falls
 * on a side meets many strips too short to fold. `tenths` of a unit, 0.04 mm, are where the side is.
 */
function rippledBars(tenths: readonly number[]): Kit["picture"] {
  const side = (x: number, first: number): (readonly [number, number])[] =>
    Array.from({ length: 20 }, (_, i) => [x + tenths[first + i]! / 10, 10 + 4 * i] as const);
  const rings = [0, 1, 2, 3].map((bar) => [
    ...side(14 + 22 * bar, 40 * bar),
    ...side(23 + 22 * bar, 40 * bar + 20).toReversed(),
  ]);
  return { width: 100, height: 100, background: 2, shapes: [{ level: 1, rule: "nonzero", rings }] };
}
