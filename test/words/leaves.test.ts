import { describe, expect, it } from "vitest";
import { leafNumber } from "../../src/core/book/leaf-number.ts";
import type { LeafName } from "../../src/core/book/numbering.ts";
import { hoursText } from "../../src/words/hours.ts";
import { leafAndPage, leafName, leafRun } from "../../src/words/leaves.ts";

const NUMBERED: LeafName = { kind: "numbered", recto: 17, verso: 18 };
const PLATE: LeafName = { kind: "plate", index: 1, of: 4, afterPage: 192 };

describe("leafName(name)", () => {
  it.each<[LeafName, string]>([
    [NUMBERED, "17"],
    [{ kind: "numbered", recto: 1201, verso: null }, "1201"],
    [PLATE, "plate 1 of 4 after p. 192"],
    [{ kind: "front", index: 2, of: 4 }, "front leaf 2 of 4"],
    [{ kind: "end", index: 1, of: 3 }, "end leaf 1 of 3"],
  ])("%o is %s", (name, wanted) => {
    expect(leafName(name)).toBe(wanted);
  });
});

describe("leafAndPage(leaf)", () => {
  it("names the page, or which unnumbered leaf it is", () => {
    expect(leafAndPage({ leaf: leafNumber(13), name: NUMBERED })).toBe("leaf 13, p. 17");
    expect(leafAndPage({ leaf: leafNumber(100), name: PLATE })).toBe("leaf 100 (plate 1 of 4 after p. 192)");
  });
});

describe("leafRun(run, nameOf)", () => {
  const nameOf = (leaf: number): LeafName =>
    leaf === 100 ? PLATE : { kind: "numbered", recto: 2 * leaf, verso: null };

  it.each([
    [13, 13, "leaf 13 (p. 26)"],
    [13, 20, "leaves 13 to 20 (p. 26 to p. 40)"],
    [100, 101, "leaves 100 to 101 (plate 1 of 4 after p. 192 to p. 202)"],
  ])("%i to %i: %s", (first, last, wanted) => {
    expect(leafRun({ first: leafNumber(first), last: leafNumber(last) }, nameOf)).toBe(wanted);
  });
});

describe("hoursText(minutes)", () => {
  it.each([
    [0, "15 min"],
    [52, "45 min"],
    [53, "1 h"],
    [165, "2 h 45 min"],
    [600, "10 h"],
  ])("%i minutes are %s", (minutes, wanted) => {
    expect(hoursText(minutes)).toBe(wanted);
  });
});
