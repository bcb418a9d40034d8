import type { FillRule, Point, Ring } from "../../../src/core/geometry/point.ts";
import { readSvg } from "../../../src/input/svg/read-svg.ts";
import type { PaintedShape, SvgPicture } from "../../../src/input/svg/svg-picture.ts";

/** Reads a body inside `<svg viewBox="0 0 100 100">`; the body starts in line 2. */
export function readBody(body: string, attributes = 'viewBox="0 0 100 100"'): SvgPicture {
  return readSvg(
    `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${attributes}>\n${body}\n</svg>`,
  );
}

/** The only shape of a body. */
export function onlyShape(body: string, attributes?: string): PaintedShape {
  const { shapes } = readBody(body, attributes);
  if (shapes.length !== 1) throw new Error(`expected one shape, got ${shapes.length}`);
  return shapes[0]!;
}

/** Rings with coordinates rounded to 9 places, so that tables can be written in decimals. */
export function rounded(rings: readonly Ring[]): number[][][] {
  return rings.map((ring) => ring.map((point) => point.map((value) => Math.round(value * 1e9) / 1e9 + 0)));
}

/** Smallest and largest coordinates: left, top, right, bottom. */
export function boundsOf(rings: readonly Ring[]): number[] {
  const points = rings.flat();
  const [xs, ys] = [points.map((p) => p[0]), points.map((p) => p[1])];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** Signed area by the shoelace formula; positive for clockwise rings with y down. */
export function shoelace(ring: Ring): number {
  return edgesOf([ring]).reduce((sum, [p, q]) => sum + (p[0] * q[1] - q[0] * p[1]) / 2, 0);
}

export function perimeter(ring: Ring): number {
  return edgesOf([ring]).reduce((sum, [p, q]) => sum + Math.hypot(q[0] - p[0], q[1] - p[1]), 0);
}

export function edgesOf(rings: readonly Ring[]): [Point, Point][] {
  return rings.flatMap((ring) => ring.map((p, i): [Point, Point] => [p, ring[(i + 1) % ring.length]!]));
}

/** The filled stretches of the horizontal line at `y`, left to right; the line must miss every vertex. */
export function filledStretches(edges: readonly [Point, Point][], rule: FillRule, y: number): [number, number][] {
  const crossings = edges
    .filter(([p, q]) => p[1] < y !== q[1] < y)
    .map(([p, q]) => ({ x: p[0] + ((y - p[1]) / (q[1] - p[1])) * (q[0] - p[0]), down: p[1] < q[1] ? 1 : -1 }))
    .sort((a, b) => a.x - b.x);
  const stretches: [number, number][] = [];
  let winding = 0;
  crossings.forEach(({ x, down }, i) => {
    winding += rule === "evenodd" ? 1 : down;
    const next = crossings[i + 1];
    const inside = rule === "evenodd" ? winding % 2 === 1 : winding !== 0;
    if (inside && next !== undefined) stretches.push([x, next.x]);
  });
  return stretches;
}

/**
 * Filled area: between the heights of vertices and of crossings every filled stretch is a trapezoid,
 * whose area is its middle width times its height.
 */
export function filledArea(rings: readonly Ring[], rule: FillRule): number {
  const edges = edgesOf(rings);
  const heights = [...rings.flat().map((p) => p[1]), ...crossingHeights(edges)].sort((a, b) => a - b);
  return heights.slice(1).reduce((area, bottom, i) => {
    const top = heights[i]!;
    if (bottom - top < 1e-12) return area;
    const stretches = filledStretches(edges, rule, (top + bottom) / 2);
    return area + stretches.reduce((width, [from, to]) => width + to - from, 0) * (bottom - top);
  }, 0);
}

function crossingHeights(edges: readonly [Point, Point][]): number[] {
  const heights: number[] = [];
  edges.forEach(([a, b], i) => {
    for (const [c, d] of edges.slice(i + 1)) {
      const cross = (b[0] - a[0]) * (d[1] - c[1]) - (b[1] - a[1]) * (d[0] - c[0]);
      if (cross === 0) continue;
      const s = ((c[0] - a[0]) * (d[1] - c[1]) - (c[1] - a[1]) * (d[0] - c[0])) / cross;
      const t = ((c[0] - a[0]) * (b[1] - a[1]) - (c[1] - a[1]) * (b[0] - a[0])) / cross;
      if (s > 0 && s < 1 && t > 0 && t < 1) heights.push(a[1] + s * (b[1] - a[1]));
    }
  });
  return heights;
}

/** The winding number of rings about a point, by the sum of the angles they sweep. */
export function windingNumber(rings: readonly Ring[], [x, y]: Point): number {
  const swept = edgesOf(rings).reduce((sum, [p, q]) => {
    const [px, py, qx, qy] = [p[0] - x, p[1] - y, q[0] - x, q[1] - y];
    return sum + Math.atan2(px * qy - py * qx, px * qx + py * qy);
  }, 0);
  return Math.round(swept / (2 * Math.PI));
}
