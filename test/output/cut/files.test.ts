import { describe, expect, it } from "vitest";
import { sheetNames } from "../../../src/core/packing/sheet-sizes.ts";
import { cutFile } from "../../../src/output/cut/cut-files.ts";
import {
  areaOf,
  circleRing,
  extentOf,
  isInside,
  lengthOf,
  type Point,
  pointsAlong,
  type Ring,
  shoelace,
} from "../../core/geometry/plane.ts";
import { CUT_KITS, partFile } from "./kits.ts";
import { dxfPairs, readDxfCut } from "./read-dxf-cut.ts";
import { type CutPath, readSvgCut } from "./read-svg-cut.ts";
import { canBeDropped, coincident, lengthOfSide, sidesOfLine } from "./segments.ts";

const INCH = 25.4;
const LAYERS = ["through-cut", "press-score", "pencil-mark", "measure-check"];

describe.each(CUT_KITS)("cut files of %s", (_, { pattern, files, written, folder }) => {
  const { parts } = pattern.insert;
  const bases = [...new Set([...files.keys()].map((name) => name.replace(/-(mm|72dpi|inch)\.(svg|dxf)$/, "")))];
  const svgOf = (base: string) => readSvgCut(files.get(`${base}-mm.svg`)!);
  const cuts = (paths: readonly CutPath[]): Ring[] =>
    paths.filter((path) => path.layer === "through-cut").map((path) => path.points);

  it("are four to a drawing, each named with its unit; a drawing to a part and to a sheet", () => {
    const names = bases.flatMap((base) => [
      `${base}-mm.svg`,
      `${base}-72dpi.svg`,
      `${base}-mm.dxf`,
      `${base}-inch.dxf`,
    ]);
    expect([...files.keys()].sort()).toEqual(names.sort());
    for (const name of files.keys()) expect(name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*\.(svg|dxf)$/);
    for (const part of parts) expect(bases).toContain(partFile(part.name));
    const sheets = bases.filter((base) => base.startsWith("sheet-"));
    expect(sheets.length).toBeGreaterThanOrEqual(folder.kit.sheets.length);
    expect(bases.length).toBe(parts.length + sheets.length);
  });

  it("lie in mm beside the page, sheets of other papers than the kit's first as SVG; the page makes the others", () => {
    const [first] = sheetNames(folder.kit.sheets);
    const hasDxf = (base: string): boolean => !base.startsWith("sheet-") || base.startsWith(`sheet-${first!}-`);
    const names = bases.flatMap((base) => [`${base}-mm.svg`, ...(hasDxf(base) ? [`${base}-mm.dxf`] : [])]);
    expect(written.toSorted()).toEqual(names.sort());
    for (const [name, text] of files) expect(cutFile(folder.kit, folder.pattern, name)?.text).toBe(text);
    for (const name of ["door.svg", "no-part-mm.svg", "-mm.svg"])
      expect(cutFile(folder.kit, folder.pattern, name)).toBeUndefined();
  }, 60_000);

  describe.each(bases)("%s", (base) => {
    const sheet = svgOf(base);
    const [, , width, height] = sheet.viewBox as [number, number, number, number];

    it("is an SVG of plain paths in true size", () => {
      expect(sheet.viewBox.slice(0, 2)).toEqual([0, 0]);
      expect([sheet.width, sheet.height]).toEqual([`${width}mm`, `${height}mm`]);
      const plain = "svg title desc g path xmlns width height viewBox id d fill stroke stroke-width stroke-dasharray";
      expect([...sheet.names].filter((name) => !plain.split(" ").includes(name))).toEqual([]);
      for (const path of sheet.paths) {
        for (const [x, y] of path.points) {
          expect(x).toBeGreaterThan(0);
          expect(y).toBeGreaterThan(0);
          expect(x).toBeLessThan(width);
          expect(y).toBeLessThan(height);
        }
      }
    });

    it("says which kit, revision and settings it was made from", () => {
      expect(sheet.title).toContain(folder.kit.title);
      expect(sheet.description).toContain(`kit ${folder.kit.slug}`);
      expect(sheet.description).toMatch(/revision [0-9a-f]{8}/);
      expect(sheet.description).toContain(`hinge ${pattern.insert.hinge}`);
    });

    it("has no layers but four, told apart by dash as well; cuts are closed", () => {
      const dashes = new Map<string, string>();
      for (const path of sheet.paths) {
        expect(LAYERS).toContain(path.layer);
        dashes.set(path.layer, path.dash);
        if (path.layer === "through-cut" || path.layer === "measure-check") expect(path.closed).toBe(true);
        if (path.layer === "press-score") expect(path.closed).toBe(false);
      }
      expect(dashes.get("through-cut")).toBe("");
      expect(new Set(dashes.values()).size).toBe(dashes.size);
    });

    it("scores and marks before it cuts", () => {
      const layers = sheet.paths.map((path) => path.layer);
      expect(layers).toContain("through-cut");
      for (const layer of ["press-score", "pencil-mark"])
        expect(layers.lastIndexOf(layer)).toBeLessThan(layers.indexOf("through-cut"));
    });

    it("cuts inner contours before outer ones", () => {
      const rings = cuts(sheet.paths);
      rings.forEach((outer, i) => {
        for (const later of rings.slice(i + 1)) expect(isInside(later[0]!, [outer])).toBe(false);
      });
    });

    it("has no contour twice and no sides on each other", () => {
      const sides = sheet.paths.flatMap((path) => sidesOfLine(path.points, path.closed));
      expect(coincident(sides)).toEqual([]);
    });

    it("has no side under 0.2 mm that could be left out within 0.01 mm", () => {
      // Half of the 0.02 mm that an outline may run from the true one; the other half was spent where it was drawn.
      const avoidable = cuts(sheet.paths).flatMap((ring) =>
        sidesOfLine(ring, true).filter((side, i) => lengthOfSide(side) < 0.2 && canBeDropped(ring, i, 0.01)),
      );
      expect(avoidable.length).toBe(0);
    });

    it("is the same drawing at 72 units to the inch, in inches and in millimetres, y up in DXF", () => {
      const points = readSvgCut(files.get(`${base}-72dpi.svg`)!);
      expect(Math.abs(Number(points.width) - (width * 72) / INCH)).toBeLessThan(2e-3);
      expect(Math.abs(Number(points.height) - (height * 72) / INCH)).toBeLessThan(2e-3);
      expect(points.viewBox).toEqual([0, 0, Number(points.width), Number(points.height)]);
      points.paths.forEach((path, i) => {
        expect([path.layer, path.closed]).toEqual([sheet.paths[i]!.layer, sheet.paths[i]!.closed]);
        // A thousandth of a millimetre each way, and as much of a point.
        expect(furthest(path.points, scaled(sheet.paths[i]!.points, 72 / INCH))).toBeLessThan(4e-3);
      });
      const flipped = (at: Point): Point => [at[0], height - at[1]];
      for (const [unit, scale] of [
        ["mm", 1],
        ["inch", 1 / INCH],
      ] as const) {
        const dxf = readDxfCut(files.get(`${base}-${unit}.dxf`)!);
        expect(dxf.paths).toHaveLength(sheet.paths.length);
        for (const layer of LAYERS) {
          const drawn = dxf.paths.filter((path) => path.layer === layer);
          const expected = sheet.paths.filter((path) => path.layer === layer);
          expect(drawn).toHaveLength(expected.length);
          drawn.forEach((path, i) => {
            expect(path.closed).toBe(expected[i]!.closed);
            expect(furthest(path.points, scaled(expected[i]!.points.map(flipped), scale))).toBeLessThan(2e-3 * scale);
          });
        }
      }
    });

    // Source: DXF header variables as documented by ezdxf: $ACADVER AC1009 is R12; $INSUNITS 1 inches, 4 millimetres;
    // $MEASUREMENT 0 imperial, 1 metric; POLYLINE group code 70, bit 1: closed.
    it.each([
      ["mm", 4, 1, 1],
      ["inch", 1, 0, 1 / INCH],
    ] as const)("is a DXF R12 of polylines in %s", (unit, insunits, measurement, scale) => {
      const text = files.get(`${base}-${unit}.dxf`)!;
      const dxf = readDxfCut(text);
      expect(dxf.header).toMatchObject({ $ACADVER: "AC1009", $INSUNITS: insunits, $MEASUREMENT: measurement });
      expect(dxf.layers.toSorted()).toEqual([...LAYERS].sort());
      const most = extentOf(dxf.paths.map((path) => path.points));
      expect(most.right).toBeLessThan(width * scale);
      expect(most.top).toBeGreaterThan(0);
      for (const path of dxf.paths)
        expect(path.closed).toBe(path.layer === "through-cut" || path.layer === "measure-check");
      const pairs = dxfPairs(text);
      const entities = pairs.slice(pairs.findIndex(([code, value]) => code === 2 && value === "ENTITIES"));
      const kinds = new Set(entities.filter(([code]) => code === 0).map(([, value]) => value));
      expect([...kinds].sort()).toEqual(["ENDSEC", "EOF", "POLYLINE", "SEQEND", "VERTEX"]);
      expect(new Set(dxf.lineTypes).size).toBe(LAYERS.length);
      expect(pairs.every(([code, value]) => Number.isInteger(code) && value !== undefined)).toBe(true);
      expect([...text].every((letter) => letter.charCodeAt(0) < 128)).toBe(true);
    });
  });

  it("carry a rectangle of 50 by 20 mm to measure, turned where a sheet needs it, or two bars of 50 mm", () => {
    for (const base of bases) {
      const checks = svgOf(base).paths.filter((path) => path.layer === "measure-check");
      const sizes = checks.map((check) => {
        expect(check.points).toHaveLength(4);
        const { width, height } = extentOf([check.points]);
        return `${width.toFixed(3)} ${height.toFixed(3)}`;
      });
      const known = [
        "50.000 20.000",
        ...(base.startsWith("sheet-") ? ["20.000 50.000", "50.000 4.000 4.000 50.000"] : []),
      ];
      expect(known).toContain(sizes.join(" "));
    }
  });

  it.each(parts.map((part) => [part.name, part] as const))("draw the published part %s", (_, part) => {
    const sheet = svgOf(partFile(part.name));
    const rings = cuts(sheet.paths);
    expect(rings).toHaveLength(part.outlines.length);
    expect(Math.abs(areaOf(rings) / part.area - 1)).toBeLessThan(0.001);
    expect(Math.abs(rings.reduce((sum, ring) => sum + lengthOf(ring), 0) / part.perimeter - 1)).toBeLessThan(0.001);
    const { width, height } = extentOf(rings);
    expect(Math.abs(width - part.width)).toBeLessThan(0.05);
    expect(Math.abs(height - part.height)).toBeLessThan(0.05);
    const scores = sheet.paths.filter((path) => path.layer === "press-score");
    const pencil = sheet.paths.filter((path) => path.layer === "pencil-mark");
    // First the strokes of its name.
    const marks = pencil.slice(pencil.length - part.marks.length);
    expect(pencil.length).toBeGreaterThan(part.marks.length);
    expect(pencil.every(({ closed }) => !closed)).toBe(true);
    expect([scores.length, marks.length]).toEqual([part.scores.length, part.marks.length]);
    const lines = [...part.outlines, ...part.scores, ...part.marks.map((mark) => mark.line)];
    const drawn = [...rings, ...scores.map((path) => path.points), ...marks.map((path) => path.points)];
    const [own, there] = [extentOf(lines), extentOf(drawn)];
    const shift = (ring: Ring): Point[] => ring.map(([x, y]) => [x - own.left + there.left, y - own.top + there.top]);
    for (const outline of part.outlines) {
      const near = drawn.filter((ring) => ring.length === outline.length);
      expect(Math.min(...near.map((ring) => furthest(ring, shift(outline))))).toBeLessThan(0.002);
      expect(near.some((ring) => Math.sign(shoelace(ring)) === Math.sign(shoelace(outline)))).toBe(true);
    }
  });
});

/** How far two lists of points stand apart, at most. */
function furthest(one: readonly Point[], other: readonly Point[]): number {
  if (one.length !== other.length) return Number.POSITIVE_INFINITY;
  return Math.max(...one.map(([x, y], i) => Math.hypot(x - other[i]![0], y - other[i]![1])));
}

function scaled(points: readonly Point[], scale: number): Point[] {
  return points.map(([x, y]) => [x * scale, y * scale]);
}

// Source: closed form, circles of the picture displayed at 0.65 mm to a unit, grown and shrunk by a lip of 3 mm.
describe("chords of a cut file", () => {
  const { files } = CUT_KITS[1]![1];

  it("run at most 0.02 mm from the true circles, and near enough to be the same size", () => {
    const rings = readSvgCut(files.get("base-frame-mm.svg")!)
      .paths.filter((path) => path.layer === "through-cut")
      .map((path) => path.points);
    const { left, right, top, bottom } = extentOf(rings);
    const centre: Point = [(left + right) / 2, (top + bottom) / 2];
    const radii = [45.5 - 3, 61.75 + 3];
    expect(rings).toHaveLength(2);
    rings.forEach((ring, i) => {
      for (const point of pointsAlong(ring, 0.1)) {
        const away = Math.hypot(point[0] - centre[0], point[1] - centre[1]);
        expect(Math.abs(away - radii[i]!)).toBeLessThan(0.02);
      }
      const truth = circleRing(...centre, radii[i]!, 20_000);
      expect(Math.abs(Math.abs(shoelace(ring)) / Math.abs(shoelace(truth)) - 1)).toBeLessThan(0.001);
    });
  });

  it("round the closure tab's end and hole within 0.02 mm", () => {
    const rings = readSvgCut(files.get("closure-tab-mm.svg")!)
      .paths.filter((path) => path.layer === "through-cut")
      .map((path) => path.points);
    const hole = extentOf([rings[0]!]);
    const centre: Point = [(hole.left + hole.right) / 2, (hole.top + hole.bottom) / 2];
    const end = rings[1]!.filter(([x]) => x > centre[0] + 0.5);
    for (const [ring, closed] of [
      [rings[0]!, true],
      [end, false],
    ] as const) {
      const middles = sidesOfLine(ring, closed).map(([a, b]): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2]);
      const away = [...ring, ...middles].map(([x, y]) => Math.hypot(x - centre[0], y - centre[1]));
      expect(Math.max(...away) - Math.min(...away)).toBeLessThan(0.02);
    }
  });
});
