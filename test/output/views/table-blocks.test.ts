import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import type { Batch } from "../../../src/core/plan/batches.ts";
import type { Row } from "../../../src/output/views/row.ts";
import { tableBlocks } from "../../../src/output/views/table-blocks.ts";
import { fc } from "../../seed.ts";

function row(leaf: number, marks: number, more: Partial<Row> = {}): Row {
  return {
    leaf: leafNumber(leaf),
    patternPage: String(2 * leaf - 1),
    bookPage: String(leaf),
    unnumbered: false,
    marks: Array.from({ length: marks }, (_, i) => ({ at: String(i), cut: "1" })),
    folds: Array.from({ length: marks + 1 }, (_, i) => 1 + (i % 2)),
    border: false,
    checkpoint: false,
    notch: undefined,
    ...more,
  };
}

/** Only its ends and number count here. */
function batch(number: number, first: number, last: number): Batch {
  return { number, first: { leaf: first }, last: { leaf: last } } as unknown as Batch;
}

describe("tableBlocks(rows, batches, tacks)", () => {
  it("has border leaves, then the batches, then border leaves, each row once and in order", () => {
    const rows = [1, 2, 3, 4, 5, 6, 7].map((leaf) => row(leaf, leaf === 1 || leaf === 7 ? 0 : 2));
    const blocks = tableBlocks(rows, [batch(1, 2, 3), batch(2, 4, 6)], []);
    expect(blocks.map(({ batch: of, leaves }) => [of?.number, leaves])).toEqual([
      [undefined, 1],
      [1, 2],
      [2, 3],
      [undefined, 1],
    ]);
    expect(blocks.map(({ cuts, cutsSoFar, last }) => [cuts, cutsSoFar, last])).toEqual([
      [0, 0, false],
      [4, 4, false],
      [6, 10, false],
      [0, 10, true],
    ]);
  });

  it("joins whole leaves of one level, but not over another level, a notch, a gap or a batch's end", () => {
    const whole = (leaf: number, level: number, more: Partial<Row> = {}): Row =>
      row(leaf, 0, { folds: [level], ...more });
    const notch = { from: "60", to: "75", depth: "48" };
    const rows = [whole(1, 2), whole(2, 2), whole(3, 1), whole(4, 1, { notch }), whole(5, 1), whole(7, 1), whole(8, 1)];
    const [block, next] = tableBlocks(rows, [batch(1, 1, 7), batch(2, 8, 8)], []);
    expect(block!.rows.map(({ first, last }) => [first.leaf, last.leaf])).toEqual([
      [1, 2],
      [3, 3],
      [4, 4],
      [5, 5],
      [7, 7],
    ]);
    expect(next!.rows).toHaveLength(1);
  });

  it("says the heights of notches once where all have the same, and lists tacks with their batch", () => {
    const notch = { from: "60", to: "75", depth: "48" };
    const rows = [
      row(1, 2, { notch }),
      row(2, 2, { notch: { ...notch, depth: "50" } }),
      row(3, 2, { notch: { ...notch, to: "80" } }),
    ];
    const tacks = [1, 3].map((leaf) => ({ leaf: leafNumber(leaf), place: "10–20 mm" }));
    const [alike, single] = tableBlocks(rows, [batch(1, 1, 2), batch(2, 3, 3)], tacks);
    expect(alike!.notches).toMatchObject({ from: "60", to: "75" });
    expect(single!.tacks.map(({ leaf }) => leaf)).toEqual([3]);
    const [mixed] = tableBlocks(rows, [batch(1, 1, 3)], tacks);
    expect(mixed!.notches).toBeUndefined();
  });

  it("pairs each mark with the fold above it, loses none, and ends with the last fold", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), (marks) => {
        const [block] = tableBlocks([row(1, marks)], [batch(1, 1, 1)], []);
        const { pairs } = block!.rows[0]!;
        expect(pairs.map(({ fold }) => fold)).toEqual(row(1, marks).folds);
        expect(pairs.map(({ mark }) => mark?.at)).toEqual([...row(1, marks).marks.map(({ at }) => at), undefined]);
      }),
    );
  });
});
