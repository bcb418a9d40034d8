import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { batchesOf, isCheckpoint } from "../../../src/core/plan/batches.ts";
import { KITS } from "./made.ts";

const CASES = KITS.flatMap(([name, folder]) => [13, 20].map((most) => [name, most, folder] as const));

describe("batchesOf(pattern, most, tile)", () => {
  // Common practice, no source: batches of 15 to 20 leaves.
  it.each(CASES)("%s in batches of at most %d: even, in order, every picture leaf once", (_, most, { pattern }) => {
    const batches = batchesOf(pattern, most, undefined);
    const { firstLeaf, lastLeaf } = pattern.fit;
    const sizes = batches.map((batch) => batch.count);
    expect(Math.max(...sizes)).toBeLessThanOrEqual(most);
    expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1);
    expect(batches).toHaveLength(Math.ceil((lastLeaf - firstLeaf + 1) / most));
    let next = firstLeaf;
    batches.forEach((batch, i) => {
      expect([batch.number, batch.first.leaf]).toEqual([i + 1, next]);
      expect(batch.last.leaf).toBe(next + batch.count - 1);
      next = leafNumber(next + batch.count);
    });
    expect(next).toBe(lastLeaf + 1);
  });

  it.each(KITS)("%s: packs up by one caliper for each leaf that lies on the other side", (_, { pattern }) => {
    const { blockThickness, leaves } = pattern.book;
    for (const batch of batchesOf(pattern, 20, 1.5)) {
      const sunk = ((batch.first.leaf - 1) * blockThickness) / leaves;
      expect(batch.packing).toBeCloseTo(sunk, 9);
      expect(Math.abs(batch.tiles! * 1.5 - sunk)).toBeLessThanOrEqual(0.75 + 1e-9);
      expect(Number.isInteger(batch.tiles)).toBe(true);
    }
  });

  it("has no tiles where the maker has none", () => {
    expect(batchesOf(KITS[0]![1].pattern, 20, undefined).every((batch) => batch.tiles === undefined)).toBe(true);
  });
});

describe("isCheckpoint(leaf)", () => {
  it.each(KITS)("%s: is every tenth picture leaf, and no border leaf", (_, { pattern }) => {
    const { firstLeaf, lastLeaf } = pattern.fit;
    const checkpoints = pattern.leaves.filter(isCheckpoint).map((leaf) => leaf.leaf);
    const tenths = Array.from(
      { length: Math.floor((lastLeaf - firstLeaf + 1) / 10) },
      (_tenth, i) => firstLeaf + 10 * i + 9,
    );
    expect(checkpoints).toEqual(tenths);
  });
});
