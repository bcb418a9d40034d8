import { describe, expect, it } from "vitest";
import { sortPairs } from "../../../src/core/geometry/sort-pairs.ts";
import { fc } from "../../seed.ts";

/** Nearly sorted, with equal ones, and beyond one block of the sorter; some pairs beyond those that are sorted. */
const keys = fc.array(fc.integer({ min: 0, max: 40 }), { maxLength: 150 });

describe("sortPairs(keys, values, count)", () => {
  it.each(["any order", "nearly sorted"])("sorts as a stable sort of records does: %s", (order) => {
    fc.assert(
      fc.property(keys, fc.nat(5), (drawn, beyond) => {
        const list = order === "any order" ? drawn : drawn.map((key, i) => 3 * i + key);
        const count = Math.max(0, list.length - beyond);
        const records = list.map((key, value) => ({ key, value }));
        const expected = [...records.slice(0, count).sort((a, b) => a.key - b.key), ...records.slice(count)];
        const [sorted, values] = [Float64Array.from(list), Int32Array.from(list, (_, i) => i)];
        sortPairs(sorted, values, count);
        expect([...sorted]).toEqual(expected.map(({ key }) => key));
        expect([...values]).toEqual(expected.map(({ value }) => value));
      }),
    );
  });
});
