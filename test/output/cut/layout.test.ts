import { describe, expect, it } from "vitest";
import { layOut } from "../../../src/core/packing/lay-out.ts";
import { sheetPaths } from "../../../src/core/packing/sheet-paths.ts";
import type { Part } from "../../../src/core/window/part.ts";
import { partsOf } from "../../../src/core/window/window.ts";
import {
  distanceTo,
  extentOf,
  isInside,
  type Point,
  pointsAlong,
  type Ring,
  rimAndHoles,
} from "../../core/geometry/plane.ts";
import type { PublishedPart } from "../../core/light/published-window.ts";
import { CUT_KITS } from "./kits.ts";
import { readSvgCut } from "./read-svg-cut.ts";

/** What the kits name, in mm. Source: A4 by ISO 216:2007 Table 1 (seen through a second party); Letter 8.5 × 11 in; 12 in are 304.8 mm. */
const SIZES: Readonly<Record<string, readonly [width: number, height: number]>> = {
  a4: [210, 297],
  letter: [215.9, 279.4],
  "12x12-in": [304.8, 304.8],
  "half-half": [180, 260],
};

/** Least free edge and least distance of two parts, mm (common practice, no source; ISO 216 allows a sheet 2 mm less). */
const EDGE = 5;
const APART = 2;

interface Placed {
  readonly part: PublishedPart;
  readonly rings: readonly Ring[];
}

describe.each(CUT_KITS)("sheets of %s", (_, { pattern, files, folder }) => {
  const { parts } = pattern.insert;
  const names = [...files.keys()].filter((name) => name.startsWith("sheet-") && name.endsWith("-mm.svg"));
  const sheets = names.map((name) => {
    const [, size, material] = /^sheet-(.+)-(card|acetate|paper)-(\d+)-mm\.svg$/.exec(name)!;
    const read = readSvgCut(files.get(name)!);
    const titles = read.title.slice(read.title.lastIndexOf(": ") + 2).split(", ");
    return { name, size: size!, material: material!, read, placed: placedParts(read, titles, parts) };
  });
  const sizes = [...new Set(sheets.map((sheet) => sheet.size))];

  it("have the sizes that their names say", () => {
    expect(sizes).toHaveLength(folder.kit.sheets.length);
    for (const { size, read } of sheets) {
      expect(Math.abs(read.viewBox[2]! - SIZES[size]![0])).toBeLessThan(1e-3);
      expect(Math.abs(read.viewBox[3]! - SIZES[size]![1])).toBeLessThan(1e-3);
    }
  });

  it.each(sizes)("hold every part once, or report it as too large: %s", (size) => {
    const laid = sheets
      .filter((sheet) => sheet.size === size)
      .flatMap((sheet) => sheet.placed.map((one) => one.part.name));
    const [width, height] = SIZES[size]!;
    const isLarge = (part: PublishedPart): boolean => {
      const { width: w, height: h } = extentOf(linesOf(part));
      const fits = (a: number, b: number): boolean => a <= width - 2 * EDGE && b <= height - 2 * EDGE;
      return !fits(w, h) && !fits(h, w);
    };
    const missing = parts.filter((part) => !laid.includes(part.name));
    for (const part of parts.filter(isLarge)) expect(missing).toContain(part);
    expect(laid).toHaveLength(new Set(laid).size);
    const sheet = folder.kit.sheets.find((one) => one.width === width || Math.abs(one.width - width) < 1e-6)!;
    const { tooLarge } = layOut(partsOf(folder.pattern.window), sheet);
    expect(tooLarge.map((part) => part.id).sort()).toEqual(missing.map((part) => part.id).sort());
  });

  it.each(names)("keep margins and distances: %s", (name) => {
    const { read, placed, material } = sheets.find((sheet) => sheet.name === name)!;
    const [, , width, height] = read.viewBox as [number, number, number, number];
    for (const one of placed) expect(one.part.material).toBe(material);
    for (const { rings } of placed) {
      const box = extentOf(rings);
      expect(Math.min(box.left, box.top, width - box.right, height - box.bottom)).toBeGreaterThanOrEqual(EDGE);
    }
    const checks = read.paths.filter((path) => path.layer === "measure-check").map((path) => path.points);
    for (const check of checks) {
      for (const point of pointsAlong(check, 3)) {
        for (const { rings } of placed) {
          expect(isInside(point, rings)).toBe(false);
          expect(distanceTo(point, rings)).toBeGreaterThanOrEqual(APART);
        }
      }
    }
    const pieces = placed.map((one) => [...one.rings]);
    pieces.forEach((one, i) => {
      for (const other of pieces.slice(i + 1)) {
        const [a, b] = [rimAndHoles(one).rim, rimAndHoles(other).rim];
        expect(boxesApart(a, b)).toBeGreaterThanOrEqual(APART);
        for (const point of pointsAlong(a, 3)) {
          expect(isInside(point, [b])).toBe(false);
          expect(distanceTo(point, [b])).toBeGreaterThanOrEqual(APART);
        }
      }
    });
  });

  it.each(names)("keep each part's shape, turned but never mirrored: %s", (name) => {
    const { placed } = sheets.find((sheet) => sheet.name === name)!;
    for (const { part, rings } of placed) {
      const lines = part.outlines;
      expect(rings.map((ring) => ring.length).sort()).toEqual(lines.map((ring) => ring.length).sort());
      const fits = TURNS.some((turn) => {
        const [from, to] = [extentOf(lines.map((ring) => ring.map(turn))), extentOf(rings)];
        return lines.every((ring) => {
          const moved = ring.map(turn).map(([x, y]): Point => [x - from.left + to.left, y - from.top + to.top]);
          return rings.some((other) => other.length === moved.length && furthest(moved, other) < 0.003);
        });
      });
      expect(fits, part.name).toBe(true);
    }
  });

  it.each(sizes)("are no fewer than the parts' areas need and no more than a sheet a part: %s", (size) => {
    for (const material of new Set(parts.map((part) => part.material))) {
      const of = sheets.filter((sheet) => sheet.size === size && sheet.material === material);
      const laid = of.flatMap((sheet) => sheet.placed);
      const area = laid.reduce((sum, one) => sum + one.part.area, 0);
      expect(of.length).toBeGreaterThanOrEqual(Math.ceil(area / (SIZES[size]![0] * SIZES[size]![1])));
      expect(of.length).toBeLessThanOrEqual(laid.length);
    }
  });
});

/** Quarter turns, as seen with y down; none mirrors. */
const TURNS: readonly ((point: Point) => Point)[] = [
  ([x, y]) => [x, y],
  ([x, y]) => [-y, x],
  ([x, y]) => [-x, -y],
  ([x, y]) => [y, -x],
];

/** Which outlines of a sheet belong to which part: an outline of each count of points, all of them inside the part's rim. */
function placedParts(
  read: ReturnType<typeof readSvgCut>,
  titles: readonly string[],
  parts: readonly PublishedPart[],
): Placed[] {
  const rings = read.paths.filter((path) => path.layer === "through-cut").map((path) => path.points);
  let taken = 0;
  return titles.map((title): Placed => {
    const part = parts.find((one) => one.name === title);
    if (!part) throw new Error(`no part ${title}`);
    const own = rings.slice(taken, taken + part.outlines.length);
    taken += part.outlines.length;
    return { part, rings: own };
  });
}

function linesOf(part: PublishedPart): Ring[] {
  return [...part.outlines, ...part.scores, ...part.marks.map((mark) => mark.line)];
}

function boxesApart(a: Ring, b: Ring): number {
  const [one, other] = [extentOf([a]), extentOf([b])];
  return Math.max(one.left - other.right, other.left - one.right, one.top - other.bottom, other.top - one.bottom);
}

function furthest(one: readonly Point[], other: readonly Point[]): number {
  return Math.max(...one.map(([x, y], i) => Math.hypot(x - other[i]![0], y - other[i]![1])));
}

/** An upright triangle with a notch, so that no turn or mirror image of it is itself. */
function flag(id: string, width: number, height: number, count = 1): Part {
  const outline: Ring = [
    [0, 0],
    [width, 0],
    [width * 0.6, height * 0.4],
    [width * 0.9, height],
    [0, height],
  ];
  return { id, kind: "motif", material: "card", count, frame: "own", outlines: [outline], scores: [], marks: [] };
}

describe("layOut", () => {
  const sheet = { name: "A4", width: 210, height: 297 };

  it("lays each part as often as its count", () => {
    const { sheets, tooLarge } = layOut([flag("flag", 60, 90, 7), flag("pennant", 30, 20, 3)], sheet);
    const laid = sheets.flatMap((one) => one.parts.map(({ id }) => id));
    expect(laid.filter((id) => id === "flag")).toHaveLength(7);
    expect(laid.filter((id) => id === "pennant")).toHaveLength(3);
    expect(tooLarge).toEqual([]);
  });

  it("turns a part that fits only lying", () => {
    const { sheets, tooLarge } = layOut([flag("long", 270, 150)], sheet);
    expect(tooLarge).toEqual([]);
    const { width, height } = extentOf(
      sheetPaths(sheets[0]!, sheet)
        .filter((path) => path.operation === "through-cut")
        .map((path) => path.points),
    );
    expect([width, height]).toEqual([150, 270]);
  });

  it("reports a part larger than the sheet both ways and lays the others", () => {
    const { sheets, tooLarge } = layOut([flag("mast", 40, 400), flag("flag", 60, 90)], sheet);
    expect(tooLarge.map(({ id }) => id)).toEqual(["mast"]);
    expect(sheets.flatMap((one) => one.parts.map(({ id }) => id))).toEqual(["flag"]);
  });

  it("gives each material its own sheets, numbered from 1", () => {
    const clear = { ...flag("glass", 100, 100), material: "acetate" as const };
    const { sheets } = layOut([flag("flag", 150, 200, 2), clear], sheet);
    expect(sheets.map((one) => `${one.material} ${one.number}`)).toEqual(["card 1", "card 2", "acetate 1"]);
  });
});
