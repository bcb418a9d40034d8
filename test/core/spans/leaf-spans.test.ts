import { describe, expect, it } from "vitest";
import { LeafSpans } from "../../../src/core/spans/leaf-spans.ts";
import { exactLeaf, spansOf } from "./exact-leaf.ts";

describe("LeafSpans", () => {
  it("joins neighbours of one level and drops spans without length", () => {
    const leaf = exactLeaf([
      { from: 0, to: 0, level: 3 },
      { from: 0, to: 10, level: 1 },
      { from: 10, to: 20, level: 1 },
      { from: 20, to: 20, level: 2 },
      { from: 20, to: 30, level: 1 },
      { from: 30, to: 40, level: 2 },
    ]);
    expect(spansOf(leaf)).toEqual([
      { from: 0, to: 30, level: 1 },
      { from: 30, to: 40, level: 2 },
    ]);
  });

  it("has none before one is added", () => {
    expect(spansOf(new LeafSpans())).toEqual([]);
  });

  it("grows with its spans, and is filled anew from the head", () => {
    const many = Array.from({ length: 1000 }, (_, i) => ({ from: i, to: i + 1, level: 1 + (i % 2) }));
    const leaf = exactLeaf(many);
    expect(spansOf(leaf)).toEqual(many);
    leaf.count = 0;
    leaf.add(7, 2);
    expect(spansOf(leaf)).toEqual([{ from: 0, to: 7, level: 2 }]);
  });
});
