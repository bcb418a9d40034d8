import {
  areaD,
  FillRule as ClipperRule,
  differenceD,
  EndType,
  inflatePathsD,
  intersectD,
  JoinType,
  type PathsD,
  ramerDouglasPeuckerD,
  unionD,
} from "clipper2-ts";
import type { FillRule, Point, Ring } from "./point.ts";

/** An area as closed outlines: outer ones run one way, holes the other, none crosses itself or another. Lengths in mm. */
export type Area = readonly Ring[];

/** Decimals of a millimetre that the polygon library keeps. */
const PRECISION = 5;

/** Greatest distance of a round corner's chords from its true arc, mm. */
const ARC_TOLERANCE = 0.004;

/** The area that outlines enclose under a fill rule. */
export function areaOfRings(rings: readonly Ring[], rule: FillRule): Area {
  return fromPaths(
    unionD(toPaths(rings), [], rule === "nonzero" ? ClipperRule.NonZero : ClipperRule.EvenOdd, PRECISION),
  );
}

export function unite(a: Area, b: Area): Area {
  return fromPaths(unionD(toPaths(a), toPaths(b), ClipperRule.NonZero, PRECISION));
}

export function subtract(a: Area, b: Area): Area {
  return fromPaths(differenceD(toPaths(a), toPaths(b), ClipperRule.NonZero, PRECISION));
}

export function intersect(a: Area, b: Area): Area {
  return fromPaths(intersectD(toPaths(a), toPaths(b), ClipperRule.NonZero, PRECISION));
}

/** Everything within `distance` of the area (negative: everything further than that from its outside); corners round. */
export function grow(area: Area, distance: number): Area {
  if (distance === 0) return area;
  return fromPaths(
    inflatePathsD(toPaths(area), distance, JoinType.Round, EndType.Polygon, 2, PRECISION, ARC_TOLERANCE),
  );
}

/** Fewer points: none of the old ones lies further than `tolerance` from the new outline. */
export function simplify(area: Area, tolerance: number): Area {
  return area.map((ring) => simplifyRing(ring, tolerance)).filter((ring) => ring.length >= 3);
}

/** Signed area of a ring: positive where it runs clockwise as seen with y down. */
export function signedArea(ring: Ring): number {
  return areaD(toPath(ring));
}

/** Area in mm², holes taken off. */
export function sizeOf(area: Area): number {
  return Math.abs(area.reduce((sum, ring) => sum + signedArea(ring), 0));
}

/** Length of all outlines, holes included. */
export function perimeterOf(area: Area): number {
  return area.reduce(
    (sum, ring) =>
      sum +
      ring.reduce(
        (length, point, i) =>
          length + Math.hypot(ring[(i + 1) % ring.length]![0] - point[0], ring[(i + 1) % ring.length]![1] - point[1]),
        0,
      ),
    0,
  );
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function boxOf(rings: readonly (readonly Point[])[]): Box {
  const xs = rings.flat().map(([x]) => x);
  const ys = rings.flat().map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** The outer outlines of an area and its holes, apart. */
export function outlinesOf(area: Area): { readonly outer: Area; readonly holes: Area } {
  const sense = Math.sign(area.reduce((sum, ring) => sum + signedArea(ring), 0));
  return {
    outer: area.filter((ring) => Math.sign(signedArea(ring)) === sense),
    holes: area.filter((ring) => Math.sign(signedArea(ring)) !== sense),
  };
}

/** A straight-sided outline. */
export function rectangle(left: number, top: number, right: number, bottom: number): Ring {
  return [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
}

/** Splits the ring at its two points furthest apart in x, so that the open simplifier keeps its shape. */
function simplifyRing(ring: Ring, tolerance: number): Ring {
  const leftmost = ring.reduce((best, point, i) => (point[0] < ring[best]![0] ? i : best), 0);
  const turned = [...ring.slice(leftmost), ...ring.slice(0, leftmost)];
  const rightmost = turned.reduce((best, point, i) => (point[0] > turned[best]![0] ? i : best), 0);
  const there = thin(turned.slice(0, rightmost + 1), tolerance);
  const back = thin([...turned.slice(rightmost), turned[0]!], tolerance);
  return [...there.slice(0, -1), ...back.slice(0, -1)];
}

function thin(points: readonly Point[], tolerance: number): Point[] {
  if (points.length < 3) return [...points];
  return ramerDouglasPeuckerD(
    points.map(([x, y]) => ({ x, y })),
    tolerance,
  ).map(({ x, y }) => [x, y] as const);
}

function toPath(ring: Ring): { x: number; y: number }[] {
  return ring.map(([x, y]) => ({ x, y }));
}

function toPaths(rings: readonly Ring[]): PathsD {
  return rings.map(toPath);
}

function fromPaths(paths: PathsD): Area {
  return paths.map((path) => path.map(({ x, y }) => [x, y] as const));
}
