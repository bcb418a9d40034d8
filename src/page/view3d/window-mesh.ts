import type { Point } from "../../core/geometry/point.ts";
import type { PanelPlace } from "./pose.ts";
import { type Slab, slabsOf } from "./slabs.ts";

type Vertex = readonly [x: number, y: number, thickness: number];

/** A flat part as triangles: three numbers a vertex (the part's x and y, and the distance in front of the panel), mm. */
export interface FlatMesh {
  readonly vertices: Float32Array;
}

/** No slab and no piece of rim is wider than this before a curve bends it, mm. */
const STEP = 2;

/** A part between two distances in front of the panel: both faces, and the rims of all its outlines. */
export function flatMesh(outlines: readonly (readonly Point[])[], back: number, front: number): FlatMesh {
  const slabs = slabsOf(outlines, STEP);
  const triangles = [
    ...slabs.flatMap((slab) => face(slab, front)),
    ...(front > back ? slabs.flatMap((slab) => face(slab, back)) : []),
    ...(front > back ? outlines.flatMap((ring) => rim(ring, back, front)) : []),
  ];
  return { vertices: Float32Array.from(triangles.flat()) };
}

/** What of an area lies on one side of an upright line: the door without the flap behind its hinge. */
export function besideHinge(
  outlines: readonly (readonly Point[])[],
  hinge: number,
  side: "left" | "right",
): (readonly Point[])[] {
  const inside = (x: number): boolean => (side === "left" ? x >= hinge - 1e-6 : x <= hinge + 1e-6);
  return outlines
    .map((ring) =>
      ring.flatMap((point, i): Point[] => {
        const next = ring[(i + 1) % ring.length]!;
        const kept: Point[] = inside(point[0]) ? [point] : [];
        if (inside(point[0]) === inside(next[0])) return kept;
        const share = (hinge - point[0]) / (next[0] - point[0]);
        return [...kept, [hinge, point[1] + share * (next[1] - point[1])]];
      }),
    )
    .filter((ring) => ring.length >= 3);
}

/** Stands a part in the book; y up from the leaves' middle height. `pivot` (x, z) becomes the origin. */
export function bendFlat(
  { vertices }: FlatMesh,
  panel: (x: number) => PanelPlace,
  leafHeight: number,
  pivot: { readonly x: number; readonly z: number },
  into: Float32Array,
): void {
  for (let at = 0; at < vertices.length; at += 3) {
    const place = panel(vertices[at]!);
    const before = vertices[at + 2]!;
    into[at] = place.x + before * place.outX - pivot.x;
    into[at + 1] = leafHeight / 2 - vertices[at + 1]!;
    into[at + 2] = place.z + before * place.outZ - pivot.z;
  }
}

function face({ left, right, upper, lower }: Slab, at: number): Vertex[] {
  const corners: readonly Vertex[] = [
    [left, upper[0], at],
    [left, lower[0], at],
    [right, upper[1], at],
    [right, lower[1], at],
  ];
  return quad(corners);
}

function rim(ring: readonly Point[], back: number, front: number): Vertex[] {
  return ring.flatMap((from, i) => {
    const to = ring[(i + 1) % ring.length]!;
    const pieces = Math.max(1, Math.ceil(Math.abs(to[0] - from[0]) / STEP));
    const at = (share: number): Point => [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    return Array.from({ length: pieces }, (_, k) => {
      const [a, b] = [at(k / pieces), at((k + 1) / pieces)];
      return quad([
        [...a, back],
        [...a, front],
        [...b, back],
        [...b, front],
      ]);
    }).flat();
  });
}

function quad([a, b, c, d]: readonly Vertex[]): Vertex[] {
  return [a!, b!, c!, c!, b!, d!];
}
