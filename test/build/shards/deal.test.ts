import { describe, expect, it } from "vitest";
import { dealtTo } from "../../../src/build/shards/deal.ts";
import { fc } from "../../seed.ts";

const COUNTS = [1, 2, 3, 4, 5, 6, 7, 8];

describe("dealtTo(shard, names)", () => {
  const named = (count: number): string[] => Array.from({ length: count }, (_, i) => `kit-${i}`);
  const deal = (names: readonly string[], of: number): string[][] =>
    Array.from({ length: of }, (_, i) => dealtTo({ number: i + 1, of }, names));

  it.each([0, 1, 3, 40, 200].flatMap((kits) => COUNTS.map((of) => [kits, of])))(
    "deals %i kits to %i shards: each kit once, and about as many to each",
    (kits, of) => {
      const names = named(kits);
      const shards = deal(names, of);
      expect(shards.flat().toSorted()).toEqual(names.toSorted());
      const sizes = shards.map(({ length }) => length);
      expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    },
  );

  it("does not look at the order of the names", () => {
    const names = named(40);
    expect(deal(names.toReversed(), 3)).toEqual(deal(names, 3));
  });

  it("spreads names that are alike", () => {
    const [first] = deal(named(200), 4);
    const early = first!.filter((name) => Number(name.split("-")[1]) < 50).length;
    expect(early).toBeGreaterThan(0);
    expect(early).toBeLessThan(30);
  });

  it.each(COUNTS)("moves fewer kits than there are shards where one is added, of %i shards", (of) => {
    const slugs = fc.uniqueArray(fc.stringMatching(/^[a-z]{1,8}$/), { minLength: 2, maxLength: 60 });
    fc.assert(
      fc.property(slugs, ([added, ...names]) => {
        const home = (shards: readonly string[][], name: string): number =>
          shards.findIndex((one) => one.includes(name));
        const [before, after] = [names, [...names, added!]].map((all) => deal(all, of));
        expect(names.filter((name) => home(before!, name) !== home(after!, name)).length).toBeLessThan(of);
      }),
    );
  });
});
