import { describe, expect, it } from "vitest";
import type { DrawnMotif } from "../../../src/input/kit/drawn-motif.ts";
import type { StatedMotif } from "../../../src/input/kit/schema-motif.ts";
import { turnMotif } from "../../../src/input/kit/turn-motif.ts";

/** A flag of 20 × 10 mm whose pole is 40 mm tall. */
const flag: DrawnMotif = {
  area: [
    [
      [0, 0],
      [20, 0],
      [20, 10],
      [2, 10],
      [2, 40],
      [0, 40],
    ],
  ],
  size: { width: 20, height: 40 },
  notes: [],
};

const stated = (more: Partial<StatedMotif>): StatedMotif => ({ turn: 0, mirror: false, ...more }) as StatedMotif;
const turn = (more: Partial<StatedMotif>, drawn = flag) => turnMotif(drawn, stated(more), ["insert", "motifs", 0]);

describe("turnMotif(drawn, stated, at)", () => {
  it("turns clockwise, as CSS Transforms do where y points down", () => {
    const [[, [x, y]]] = turn({ turn: 90 }).area as unknown as [[unknown, [number, number]]];
    expect([x, y]).toEqual([expect.closeTo(0), expect.closeTo(20)]);
  });

  it("keeps what it turned last, for as long as the same is asked", () => {
    const first = turn({ turn: 90 });
    expect(turn({ turn: 90, spacer: 2 } as Partial<StatedMotif>)).toBe(first);
    expect(turn({ turn: 90 }, { ...flag })).not.toBe(first);
    expect(turn({ turn: 45 }).area).not.toEqual(first.area);
    expect(turn({ turn: 90 })).toEqual(first);
    expect(turn({ turn: 90, mirror: true }).area).not.toEqual(first.area);
    expect(turn({ turn: 90, width: { mm: 40 }, height: { mm: 80 } }).width).toEqual({ mm: 80 });
  });
});
