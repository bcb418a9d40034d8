import { describe, expect, it } from "vitest";
import type { Point, Ring } from "../../../src/core/geometry/point.ts";
import { edgesOf, filledArea, onlyShape, perimeter, rounded, shoelace } from "./figure.ts";

const TOLERANCE = 100 / 200_000;

/** Largest distance from a chord's middle to a circle; on a circle that is the chord's largest. */
function largestSag(ring: Ring, [cx, cy]: Point, radius: number): number {
  const sags = edgesOf([ring]).map(([p, q]) => radius - Math.hypot((p[0] + q[0]) / 2 - cx, (p[1] + q[1]) / 2 - cy));
  return Math.max(...sags);
}

describe("readSvg of circles and ellipses", () => {
  it("puts the vertices of a circle on it and its chords within the tolerance", () => {
    const [ring] = onlyShape('<circle cx="50" cy="40" r="30"/>').rings;
    for (const [x, y] of ring!) expect(Math.hypot(x - 50, y - 40)).toBeCloseTo(30, 10);
    expect(largestSag(ring!, [50, 40], 30)).toBeLessThanOrEqual(TOLERANCE);
    // No more points than the tolerance asks for: 2π / (2 acos(1 − tolerance / r)) = 544.1, rounded up by quarters.
    expect(ring!.length).toBe(548);
  });

  it("starts at 3 o'clock and runs clockwise", () => {
    // Source: SVG 2, shapes, "The 'circle' element" and "The 'ellipse' element".
    for (const body of ['<circle cx="50" cy="50" r="20"/>', '<ellipse cx="50" cy="50" rx="20" ry="20"/>']) {
      const [ring] = rounded(onlyShape(body).rings);
      expect(ring![0]).toEqual([70, 50]);
      expect(ring![ring!.length / 4]).toEqual([50, 70]);
      expect(ring![ring!.length / 2]).toEqual([30, 50]);
      expect(shoelace(ring as unknown as Ring)).toBeGreaterThan(0);
    }
  });

  it("has the perimeter and area of an ellipse", () => {
    // 4 a E(1 − b²/a²) for a = 3.5, b = 2.1 is the example in SciPy's docstring of special.ellipe.
    const { rings } = onlyShape('<ellipse cx="50" cy="50" rx="35" ry="21"/>');
    const [ring] = rings;
    expect(perimeter(ring!)).toBeLessThan(178.68899204378693);
    expect(178.68899204378693 - perimeter(ring!)).toBeLessThan(2 * Math.PI * TOLERANCE);
    expect(Math.PI * 35 * 21 - filledArea(rings, "nonzero")).toBeGreaterThan(0);
    expect(Math.PI * 35 * 21 - filledArea(rings, "nonzero")).toBeLessThan(178.7 * TOLERANCE);
  });

  it("flattens in the picture, not in the shape's own space", () => {
    const [small] = onlyShape('<circle r="0.001" transform="translate(50 50) scale(30000)"/>').rings;
    for (const [x, y] of small!) expect(Math.hypot(x - 50, y - 50)).toBeCloseTo(30, 9);
    expect(largestSag(small!, [50, 50], 30)).toBeLessThanOrEqual(TOLERANCE);
    const [tiny] = onlyShape('<circle r="30000" transform="translate(50 50) scale(0.0001)"/>').rings;
    expect(tiny!.length).toBe(176); // The same formula for r = 3 gives 172.1.
  });

  it("keeps a skewed and stretched circle on its true ellipse", () => {
    const [ring] = onlyShape('<circle r="5" transform="matrix(4 1 -3 2 50 50)"/>').rings;
    for (const [p, q] of edgesOf([ring!])) {
      const inverse = ([x, y]: Point): number =>
        Math.hypot((2 * (x - 50) + 3 * (y - 50)) / 11, (4 * (y - 50) - (x - 50)) / 11);
      expect(inverse(p)).toBeCloseTo(5, 10);
      // 5.099… is the greater singular value of the matrix: √((30 + √(30² − 4·11²)) / 2).
      const stretch = Math.sqrt((30 + Math.sqrt(30 ** 2 - 4 * 121)) / 2);
      expect((5 - inverse([(p[0] + q[0]) / 2, (p[1] + q[1]) / 2])) * stretch).toBeLessThanOrEqual(
        TOLERANCE * (1 + 1e-9),
      );
    }
  });
});

describe("readSvg of elliptical arcs in path data", () => {
  // The four cases of SVG 2, paths, figure "arcs02", with numbers of our own: same start, end and radii.
  it.each<[string, number, Point]>([
    ["0 0 1", Math.PI / 2, [40, 60]],
    ["0 1 0", (3 * Math.PI) / 2, [40, 60]],
    ["0 0 0", Math.PI / 2, [60, 40]],
    ["0 1 1", (3 * Math.PI) / 2, [60, 40]],
  ])("follows the flags %s", (flags, angle, centre) => {
    // From (40, 40) to (60, 60) with r = 20 the centres are (40, 60) and (60, 40).
    const { rings } = onlyShape(`<path d="M40 40A20 20 ${flags} 60 60L${centre.join()}z"/>`);
    const arc = rings[0]!.slice(0, -1);
    for (const point of arc) expect(Math.hypot(point[0] - centre[0], point[1] - centre[1])).toBeCloseTo(20, 10);
    const length = perimeter(rings[0]!) - 40;
    expect(20 * angle - length).toBeGreaterThan(0);
    expect(20 * angle - length).toBeLessThan(angle * TOLERANCE);
  });

  it("scales radii up that cannot reach", () => {
    // SVG 2 implementation notes, "Correction of out-of-range radii": a half circle over the chord.
    const { rings } = onlyShape('<path d="M20 50A1 1 0 0 1 80 50z"/>');
    for (const [x, y] of rings[0]!) expect(Math.hypot(x - 50, y - 50)).toBeCloseTo(30, 10);
    expect(Math.min(...rings[0]!.map((p) => p[1]))).toBeCloseTo(20, 2);
  });

  it("turns the half-axes by the angle", () => {
    const { rings } = onlyShape('<path d="M50 10A40 20 90 0 1 50 90A40 20 90 0 1 50 10z"/>');
    for (const [x, y] of rings[0]!) expect(((x - 50) / 20) ** 2 + ((y - 50) / 40) ** 2).toBeCloseTo(1, 10);
  });
});

describe("readSvg of Bézier curves", () => {
  // With evenly spaced control abscissas x = 100 t, so the curve is the graph of a polynomial in x / 100.
  const bernstein = (ordinates: readonly number[], t: number): number => {
    const n = ordinates.length - 1;
    const choose = (k: number): number => (k === 0 ? 1 : (choose(k - 1) * (n - k + 1)) / k);
    return ordinates.reduce((sum, y, k) => sum + choose(k) * (1 - t) ** (n - k) * t ** k * y, 0);
  };

  it.each<[string, string, number[]]>([
    ["quadratic", "M0 0Q50 90 100 10V100H0z", [0, 90, 10]],
    ["cubic", "M0 0C33.333333333333336 120 66.66666666666667 -80 100 40V100H0z", [0, 120, -80, 40]],
  ])("keeps a %s curve's vertices on it and its chords within the tolerance", (_, d, ordinates) => {
    const curve = onlyShape(`<path d="${d}"/>`).rings[0]!.slice(0, -2);
    expect(curve.length).toBeGreaterThan(100);
    for (const [i, [x, y]] of curve.entries()) {
      expect(y).toBeCloseTo(bernstein(ordinates, x / 100), 9);
      const next = curve[i + 1];
      if (next === undefined) continue;
      for (const share of [0.25, 0.5, 0.75]) {
        const at = x + (next[0] - x) * share;
        const off = Math.abs(bernstein(ordinates, at / 100) - (y + (next[1] - y) * share));
        expect(off).toBeLessThanOrEqual(TOLERANCE);
      }
    }
  });

  it("has the area under a parabola", () => {
    // ∫ of the quadratic with ordinates 0, 90, 0 over 0…100 is 100 · (0 + 90 + 0) / 3.
    const { rings } = onlyShape('<path d="M0 0Q50 90 100 0z"/>');
    expect(Math.abs(filledArea(rings, "nonzero") - 3000)).toBeLessThan(160 * TOLERANCE);
  });
});
