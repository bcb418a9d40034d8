import { describe, expect, it } from "vitest";
import type { Part } from "../../../../src/core/window/part.ts";
import { partsOf } from "../../../../src/core/window/window.ts";
import { lineLook } from "../../../../src/output/drawing/line-kinds.ts";
import { templateSheets } from "../../../../src/output/drawing/sheets/template-sheets.ts";
import { markText, partName } from "../../../../src/words/parts.ts";
import { circleRing, extentOf, type Point, type Ring } from "../../../core/geometry/plane.ts";
import { discFolder } from "../../../core/light/read-disc-kit.ts";
import { CUT_KITS } from "../../cut/kits.ts";
import { type Drawing, readDrawing } from "../read-drawing.ts";

/** What A4 and US Letter can both print: a true-scale sheet is 182 × 245 mm. */
const SHEET = { width: 182, height: 245 };

const POSITION = lineLook("position")["stroke-dasharray"];
const SCORE = lineLook("score")["stroke-dasharray"];

interface Sheet extends Drawing {
  readonly title: string;
}

const read = (parts: readonly Part[]): Sheet[] =>
  templateSheets(parts, "mm").map(({ title, drawing }) => ({ title, ...readDrawing(drawing) }));

const linesOf = (part: Part): Ring[] => [...part.outlines, ...part.scores, ...part.marks.map((mark) => mark.line)];

/** Position lines outside the tile with the number that stands at them, in the part's own coordinates. */
function matches(sheet: Sheet): { number: string; upright: boolean; at: number }[] {
  const tile = sheet.tiles[0]!;
  return sheet.texts
    .filter((text) => /^match \d+$/.test(text.words))
    .map((text) => {
      const lines = sheet.paths.filter((path) => !path.inTile && path.dash === POSITION && path.points.length === 2);
      const near = lines
        .filter(({ points: [a] }) => Math.hypot(text.x - a![0], text.y - a![1]) < 8)
        .toSorted((a, b) => away(a.points[0]!, text) - away(b.points[0]!, text));
      const [from, to] = near[0]!.points as [Point, Point];
      const upright = from[0] === to[0];
      const at = upright ? from[0] - tile.x + tile.viewBox[0] : from[1] - tile.y + tile.viewBox[1];
      return { number: text.words, upright, at };
    });
}

function away(point: Point, text: { readonly x: number; readonly y: number }): number {
  return Math.hypot(text.x - point[0], text.y - point[1]);
}

const ring = (motif: string, width: number, height: number): Part => ({
  id: `motif-${motif}`,
  kind: "motif",
  motif,
  material: "card",
  count: 1,
  frame: "wrap",
  outlines: [
    circleRing(0, 0, 1, 180).map(([x, y]): Point => [(x * width) / 2 + 30, (y * height) / 2 - 20]),
    circleRing(30, -20, 25, 90),
  ],
  scores: [],
  marks: [],
});

const tallWindow = (): Part[] => {
  const { pattern } = discFolder({
    light: false,
    book: { leafHeight: 340, leafWidth: 240, leaves: 300, blockThickness: 40 },
    fit: { height: 300, head: 20 },
    insert: { lip: 5 },
  });
  return partsOf(pattern.window);
};

const LARGE: readonly (readonly [name: string, parts: readonly Part[]])[] = [
  ["wide", [ring("wide", 400, 100)]],
  ["high", [ring("high", 90, 500)]],
  ["both ways", [ring("great", 420, 480)]],
  ["a window 300 mm high", tallWindow()],
];

describe.each(LARGE)("tiles of a part larger than the sheet: %s", (_, parts) => {
  const sheets = read(parts);
  const tiled = parts
    .map((part) => ({ part, own: sheets.filter((sheet) => sheet.title.startsWith(`${partName(part)}, sheet `)) }))
    .filter(({ own }) => own.length > 0);

  it("are two or more a part, numbered of their count, one drawing each", () => {
    expect(tiled.length).toBeGreaterThan(0);
    for (const { part, own } of tiled) {
      expect(own.length).toBeGreaterThanOrEqual(2);
      expect(own.map((sheet) => sheet.title)).toEqual(
        own.map((_, i) => `${partName(part)}, sheet ${i + 1} of ${own.length}`),
      );
      for (const sheet of own) expect(sheet.tiles).toHaveLength(1);
    }
  });

  it("are at true scale and lie on the sheet", () => {
    for (const sheet of tiled.flatMap(({ own }) => own)) {
      const { x, y, width, height, viewBox } = sheet.tiles[0]!;
      expect(viewBox.slice(2)).toEqual([width, height]);
      expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
      expect(x + width).toBeLessThanOrEqual(SHEET.width);
      expect(y + height).toBeLessThanOrEqual(SHEET.height);
    }
  });

  it("cover the part together, and neighbours overlap by at least 5 mm", () => {
    for (const { part, own } of tiled) {
      const boxes = own.map((sheet) => sheet.tiles[0]!.viewBox);
      const { left, right, top, bottom } = extentOf(linesOf(part));
      for (const [low, high, axis] of [
        [left, right, 0],
        [top, bottom, 1],
      ] as const) {
        const starts = [...new Set(boxes.map((box) => box[axis]))].sort((a, b) => a - b);
        const size = boxes[0]![axis + 2]!;
        expect(starts[0]).toBeLessThanOrEqual(low + 0.001);
        expect(starts.at(-1)! + size).toBeGreaterThanOrEqual(high - 0.001);
        for (const [i, start] of starts.slice(1).entries()) expect(starts[i]! + size - start).toBeGreaterThanOrEqual(5);
        expect(boxes.filter((box) => box[axis] === starts[0])).toHaveLength(boxes.length / starts.length);
      }
    }
  });

  it("have match lines in pairs: one number on two sheets, at one line of the part, inside both tiles", () => {
    for (const { own } of tiled) {
      const found = own.flatMap((sheet) => matches(sheet).map((match) => ({ ...match, box: sheet.tiles[0]!.viewBox })));
      const numbers = [...new Set(found.map((match) => match.number))];
      expect(numbers.length).toBeGreaterThan(0);
      for (const number of numbers) {
        const pair = found.filter((match) => match.number === number);
        expect(pair, number).toHaveLength(2);
        const [one, other] = pair as [(typeof pair)[0], (typeof pair)[0]];
        expect(one.upright).toBe(other.upright);
        expect(Math.abs(one.at - other.at)).toBeLessThan(0.02);
        const axis = one.upright ? 0 : 1;
        for (const { box } of pair) {
          expect(one.at).toBeGreaterThan(box[axis]);
          expect(one.at).toBeLessThan(box[axis] + box[axis + 2]!);
        }
      }
      const columns = new Set(own.map((sheet) => sheet.tiles[0]!.viewBox[0])).size;
      const rows = own.length / columns;
      expect(numbers).toHaveLength((columns - 1) * rows + (rows - 1) * columns);
    }
  });
});

describe.each([
  ...CUT_KITS.map(([name, kit]) => [name, partsOf(kit.folder.pattern.window)] as const),
  ["a window 300 mm high", tallWindow()] as const,
])("template sheets of %s", (_, parts) => {
  const sheets = read(parts);

  it("show every part once, by letter, name, count and material", () => {
    for (const [i, part] of parts.entries()) {
      const words = `${String.fromCharCode(65 + i)} ${partName(part)}: ${part.count} of ${part.material}`;
      const on = sheets.filter((sheet) => sheet.texts.some((text) => text.words.startsWith(words)));
      const tiled = on.filter((sheet) => sheet.title.startsWith(`${partName(part)}, sheet `));
      expect(on.length, words).toBe(tiled.length > 0 ? tiled.length : 1);
    }
  });

  it("name the three line kinds and carry both calibration bars", () => {
    for (const sheet of sheets) {
      const words = sheet.texts.map((text) => text.words);
      for (const kind of ["cut", "score", "position"]) expect(words).toContain(kind);
      expect(words.join(" ")).toContain("100 mm across");
      expect(words.join(" ")).toContain("100 mm upright");
    }
  });

  it("say what each position line means, at it or in the key", () => {
    const words = sheets.flatMap((sheet) => sheet.texts.map((text) => text.words)).join("\n");
    for (const part of parts) for (const mark of part.marks) expect(words).toContain(markText(mark.kind));
  });

  it("draw cuts full, scores dashed and positions dash-dot, all on the sheet", () => {
    const drawn = sheets.flatMap((sheet) => sheet.paths.filter((path) => !path.inTile));
    const single = parts.filter((part) => !sheets.some((sheet) => sheet.title.startsWith(`${partName(part)}, sheet `)));
    const legend = sheets.length;
    const count = (dash: string | undefined): number => drawn.filter((path) => path.dash === (dash ?? "")).length;
    expect(count(SCORE) - legend).toBe(single.reduce((sum, part) => sum + part.scores.length, 0));
    const matchLines = sheets.flatMap((sheet) => (sheet.tiles.length > 0 ? matches(sheet) : []));
    const marks = single.reduce((sum, part) => sum + part.marks.length, 0);
    expect(count(POSITION) - legend - matchLines.length).toBe(marks);
    for (const { points } of drawn) {
      for (const [x, y] of points) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
        expect(x).toBeLessThanOrEqual(SHEET.width);
        expect(y).toBeLessThanOrEqual(SHEET.height);
      }
    }
  });

  it("draw single parts at true scale, turned by a quarter at most", () => {
    const full = sheets.flatMap((sheet) => sheet.paths.filter((path) => !path.inTile && path.dash === ""));
    const sizes = full.map((path) => extentOf([path.points]));
    for (const part of parts) {
      if (sheets.some((sheet) => sheet.title.startsWith(`${partName(part)}, sheet `))) continue;
      const { width, height } = extentOf(part.outlines);
      const is = (a: number, b: number): boolean => Math.abs(a - width) < 0.003 && Math.abs(b - height) < 0.003;
      expect(
        sizes.some((size) => is(size.width, size.height) || is(size.height, size.width)),
        part.id,
      ).toBe(true);
    }
  });

  it("keep words apart from each other", () => {
    for (const sheet of sheets) {
      const lines = sheet.texts.filter((text) => text.words.includes(" of ") && text.words.includes(": "));
      const places = lines.map((text) => `${text.x} ${text.y}`);
      expect(new Set(places).size).toBe(lines.length);
      const legend = sheet.texts.find((text) => text.words === "cut")!;
      for (const line of lines) expect(line.y).toBeLessThan(legend.y - 2.5);
    }
  });
});
