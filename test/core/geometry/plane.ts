/** Plane geometry of the tests' own: slow, short, and independent of the program's polygon library. Lengths mm. */

export type Point = readonly [x: number, y: number];
export type Ring = readonly Point[];

export type Side = readonly [from: Point, to: Point];

const knownSides = new WeakMap<Ring, readonly Side[]>();

/** Sides of a closed ring. */
export function sidesOf(ring: Ring): readonly Side[] {
  const sides = knownSides.get(ring) ?? ring.map((point, i): Side => [point, ring[(i + 1) % ring.length]!]);
  knownSides.set(ring, sides);
  return sides;
}

/** Area by the shoelace formula; positive where the ring runs clockwise as seen with y down. */
export function shoelace(ring: Ring): number {
  return sidesOf(ring).reduce((sum, [a, b]) => sum + a[0] * b[1] - b[0] * a[1], 0) / 2;
}

export function lengthOf(ring: Ring): number {
  return sidesOf(ring).reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);
}

/** Area of outlines, holes taken off: what lies inside an odd number of them. Outlines must not cross. */
export function areaOf(rings: readonly Ring[]): number {
  return rings.reduce((sum, ring) => {
    const around = rings.filter((other) => other !== ring && isInside(ring[0]!, [other])).length;
    return sum + (around % 2 === 0 ? 1 : -1) * Math.abs(shoelace(ring));
  }, 0);
}

/** Whether a point lies inside an odd number of outlines. */
export function isInside([x, y]: Point, rings: readonly Ring[]): boolean {
  let inside = false;
  for (const ring of rings) {
    for (const [a, b] of sidesOf(ring)) {
      if (a[1] > y === b[1] > y) continue;
      if (x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
    }
  }
  return inside;
}

export function distanceToSide([x, y]: Point, [a, b]: Side): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const squared = dx * dx + dy * dy;
  const t = squared === 0 ? 0 : Math.max(0, Math.min(1, ((x - a[0]) * dx + (y - a[1]) * dy) / squared));
  return Math.hypot(x - a[0] - t * dx, y - a[1] - t * dy);
}

/** Distance from a point to the nearest outline. */
export function distanceTo(point: Point, rings: readonly Ring[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const ring of rings) {
    for (const side of sidesOf(ring)) {
      if (Math.abs(point[1] - (side[0][1] + side[1][1]) / 2) - Math.abs(side[0][1] - side[1][1]) / 2 > least) continue;
      least = Math.min(least, distanceToSide(point, side));
    }
  }
  return least;
}

/** Points along a ring: its corners, and between them none further apart than `step`. */
export function pointsAlong(ring: Ring, step: number): Point[] {
  return sidesOf(ring).flatMap(([a, b]) => {
    const pieces = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / step));
    return Array.from(
      { length: pieces },
      (_, i): Point => [a[0] + ((b[0] - a[0]) * i) / pieces, a[1] + ((b[1] - a[1]) * i) / pieces],
    );
  });
}

export interface Extent {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly width: number;
  readonly height: number;
}

export function extentOf(rings: readonly Ring[]): Extent {
  const xs = rings.flat().map(([x]) => x);
  const ys = rings.flat().map(([, y]) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  return { left, right, top, bottom, width: right - left, height: bottom - top };
}

/** The ring that holds all others, and the others. */
export function rimAndHoles(rings: readonly Ring[]): { readonly rim: Ring; readonly holes: readonly Ring[] } {
  const rim = rings.reduce((most, ring) => (Math.abs(shoelace(ring)) > Math.abs(shoelace(most)) ? ring : most));
  return { rim, holes: rings.filter((ring) => ring !== rim) };
}

/** Perimeter of an ellipse with half axes a ≥ b by the arithmetic-geometric mean. */
export function ellipsePerimeter(a: number, b: number): number {
  let [x, y] = [a, b];
  let sum = a * a - (a * a - b * b) / 2;
  for (let power = 1; Math.abs(x - y) > 1e-15 * a; power *= 2) {
    const half = (x - y) / 2;
    sum -= power * half * half;
    [x, y] = [(x + y) / 2, Math.sqrt(x * y)];
  }
  return (2 * Math.PI * sum) / x;
}

export function circleRing(cx: number, cy: number, radius: number, corners = 720): Point[] {
  return ellipseRing(cx, cy, radius, radius, corners);
}

export function ellipseRing(cx: number, cy: number, a: number, b: number, corners = 720): Point[] {
  return Array.from({ length: corners }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / corners;
    return [cx + a * Math.cos(angle), cy + b * Math.sin(angle)];
  });
}

/** The stretches of the level line at `y` inside outlines, from left to right. */
export function stretchesAt(rings: readonly Ring[], y: number): [number, number][] {
  const xs = rings
    .flatMap(sidesOf)
    .filter(([a, b]) => a[1] > y !== b[1] > y)
    .map(([a, b]) => a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]))
    .sort((a, b) => a - b);
  return Array.from({ length: xs.length / 2 }, (_, i) => [xs[2 * i]!, xs[2 * i + 1]!]);
}
