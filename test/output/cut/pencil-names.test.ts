import { describe, expect, it } from "vitest";
import { layOut } from "../../../src/core/packing/lay-out.ts";
import type { Part } from "../../../src/core/window/part.ts";
import { cutDxf } from "../../../src/output/cut/dxf-file.ts";
import { withNames } from "../../../src/output/cut/pencil-names.ts";
import { inStrokes, strokesOf, strokesWidth } from "../../../src/output/cut/stroke-letters.ts";
import { extentOf } from "../../core/geometry/plane.ts";
import { madePart } from "../../core/plan/made-pattern.ts";
import { readDxfCut } from "./read-dxf-cut.ts";

const A4 = { name: "A4", width: 210, height: 297 };
const card = (width: number, height: number, changes: Partial<Part> = {}): Part =>
  madePart("motif", "card", width, height, changes);

/** What dxf-parser reads on the pencil layer of the first sheet, in mm, y down. */
function pencilOn(part: Part, names: readonly string[]) {
  const [sheet] = layOut([part], A4).sheets;
  const paths = withNames(sheet!, A4, () => names);
  const dxf = readDxfCut(cutDxf({ title: "", about: "", width: A4.width, height: A4.height, paths }, "mm"));
  return dxf.paths.filter(({ layer }) => layer === "pencil-mark");
}

describe("withNames(sheet, namesOf)", () => {
  // By hand: one L, 6 mm high and 4 mm wide, in the middle of a part from 8 to 48 mm both ways: from 26 to 30 across, 25 to 31 down.
  it("draws a name in the middle of a part, as open lines of the pencil layer only", () => {
    const [letter, ...more] = pencilOn(card(40, 40), ["l"]);
    expect(more).toEqual([]);
    expect(letter!.closed).toBe(false);
    const expected = [
      [26, 25],
      [26, 31],
      [30, 31],
    ];
    letter!.points.forEach(([x, y], i) => {
      expect(x).toBeCloseTo(expected[i]![0]!, 6);
      expect(A4.height - y).toBeCloseTo(expected[i]![1]!, 6);
    });
  });

  it("keeps to the card where a hole is in the middle", () => {
    const rim = card(60, 60).outlines[0]!;
    // The hole leaves 10 mm on each side; the part's corner is at (7, 11), on the sheet at (8, 8).
    const hole = [
      [17, 21],
      [17, 61],
      [57, 61],
      [57, 21],
    ] as const;
    const drawn = pencilOn(card(60, 60, { outlines: [rim, hole] }), ["lot"]);
    const { left, right, top, bottom } = extentOf(drawn.map(({ points }) => points));
    const [head, foot] = [A4.height - bottom, A4.height - top];
    expect([left, 68 - right, head, 68 - foot].every((away) => away >= 8)).toBe(true);
    expect(right < 18 || left > 58 || foot < 18 || head > 58).toBe(true);
  });

  it("falls back on smaller letters, and on a shorter name", () => {
    const { height } = extentOf(pencilOn(card(5.5, 5.5), ["1"]).map(({ points }) => points));
    expect(height).toBeCloseTo(3, 6);
    expect(
      pencilOn(card(12, 12), ["a name that no sheet is wide enough for, not even beside it".repeat(3), "1"]),
    ).toHaveLength(1);
  });

  // By hand: the part is at 8 to 12 mm both ways, so a name of 3 mm and its free room stand outside of it.
  it("names a part without room beside it, on no other part and no other name", () => {
    const [small, ...rest] = ["ll", "tt"].map((name, i) => ({ ...card(4, 4), id: `${i}`, motif: name }));
    const large = card(150, 240, { id: "large", motif: "" });
    const [sheet] = layOut([small!, ...rest, large], A4).sheets;
    const paths = withNames(sheet!, A4, ({ motif }) => [motif ?? ""]);
    const names = paths.filter(({ operation }) => operation === "pencil-mark").map(({ points }) => extentOf([points]));
    // Two letters with one and two strokes each.
    expect(names).toHaveLength(2 + 4);
    for (const { left, right, top, bottom } of names) {
      for (const { x, y, width, height } of sheet!.places)
        expect(right < x || left > x + width || bottom < y || top > y + height).toBe(true);
      expect(Math.min(left, top)).toBeGreaterThan(0);
      expect([right < A4.width, bottom < A4.height]).toEqual([true, true]);
    }
    const [one, other] = [names.slice(0, 2), names.slice(2)];
    for (const a of one)
      for (const b of other)
        expect(a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top).toBe(true);
  });
});

describe("stroke letters", () => {
  it("are large ones without accents; what cannot be drawn is left out", () => {
    expect(inStrokes("3 Möwe & Öl")).toBe("3 MOWE OL");
    expect(inStrokes("月")).toBe("");
  });

  it("stand within their width and height", () => {
    const all = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-";
    const { left, right, top, bottom } = extentOf(strokesOf(all, 6));
    expect([left, top, bottom]).toEqual([0, 0, 6]);
    expect(right).toBeLessThanOrEqual(strokesWidth(all, 6));
    for (const letter of all) expect(strokesOf(letter, 6).flat().length).toBeGreaterThan(1);
  });
});
