import { FillRule as ClipperRule, ClipType, type Paths64, PathType } from "clipper2-ts/dist/Core.js";
import { Clipper64 } from "clipper2-ts/dist/Engine.js";
import type { FillRule, Ring } from "./point.ts";
import { rawOffset } from "./raw-offset.ts";

/** An area as closed outlines: outer ones run one way, holes the other, none crosses itself or another. Lengths in mm. */
export type Area = readonly Ring[];

/** The polygon library counts in whole numbers: so many to a millimetre. */
const SCALE = 100_000;

/** Greatest distance of a round corner's chords from its true arc, mm. */
const ARC_TOLERANCE = 0.004;

/** The area that outlines enclose under a fill rule. */
export function areaOfRings(rings: readonly Ring[], rule: FillRule): Area {
  return combine(ClipType.Union, rings, [], rule === "nonzero" ? ClipperRule.NonZero : ClipperRule.EvenOdd);
}

export function unite(a: Area, b: Area): Area {
  return combine(ClipType.Union, a, b);
}

export function subtract(a: Area, b: Area): Area {
  return combine(ClipType.Difference, a, b);
}

export function intersect(a: Area, b: Area): Area {
  return combine(ClipType.Intersection, a, b);
}

/** Everything within `distance` of the area (negative: everything further than that from its outside); corners round. */
export function grow(area: Area, distance: number): Area {
  if (distance === 0) return area;
  const rings = inWholes(area);
  const reversed = rings.reduce((sum, ring) => sum + signedArea(ring), 0) < 0;
  const by = (reversed ? -distance : distance) * SCALE;
  const clipper = new Clipper64();
  clipper.reverseSolution = reversed;
  clipper.addPaths(toPaths(rings.map((ring) => rawOffset(ring, by, ARC_TOLERANCE * SCALE))), PathType.Subject);
  return solved(clipper, ClipType.Union, reversed ? ClipperRule.Negative : ClipperRule.Positive);
}

function combine(type: ClipType, a: Area, b: Area, rule: ClipperRule = ClipperRule.NonZero): Area {
  const clipper = new Clipper64();
  clipper.addPaths(toPaths(inWholes(a)), PathType.Subject);
  if (b.length > 0) clipper.addPaths(toPaths(inWholes(b)), PathType.Clip);
  return solved(clipper, type, rule);
}

function solved(clipper: Clipper64, type: ClipType, rule: ClipperRule): Area {
  const paths: Paths64 = [];
  clipper.execute(type, rule, paths);
  return paths.map((path) => path.map(({ x, y }) => [x / SCALE, y / SCALE] as const));
}

function inWholes(area: Area): Area {
  return area.map((ring) => ring.map((at) => [Math.round(at[0] * SCALE), Math.round(at[1] * SCALE)] as const));
}

/** Signed area of a ring: positive where it runs clockwise as seen with y down. */
export function signedArea(ring: Ring): number {
  let sum = 0;
  for (let i = 0, last = ring.length - 1; i <= last; i += 1) {
    const at = ring[i]!;
    const next = ring[i === last ? 0 : i + 1]!;
    sum += (at[0] * next[1] - next[0] * at[1]) / 2;
  }
  return sum;
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

function toPaths(rings: readonly Ring[]): Paths64 {
  return rings.map((ring) => ring.map((at) => ({ x: at[0], y: at[1] })));
}
