import type { FillRule, Point, Ring } from "../../src/core/geometry/point.ts";
import type { LevelMap, LevelShape } from "../../src/core/picture/level-map.ts";

const SIDE = 1000;
const BACKGROUND = 3;

/** Waves of an outline, and how deep they are beside its radius: some forty crossings on a leaf. */
const WAVES = { count: 240, depth: 0.08 };

/** A rim with a well, both with wavy outlines, of so many edges together. */
export function wavyPicture(edges: number): LevelMap {
  return picture([wave(0.46, edges / 2, 1), wave(0.34, edges / 2, 2)]);
}

/** Dots in rows that are turned a little, so that no two stand under one another. */
export function dottedPicture(count: number): LevelMap {
  const across = Math.ceil(Math.sqrt(count));
  const dots = Array.from({ length: count }, (_, i) => {
    const [column, row] = [i % across, Math.floor(i / across)];
    const pitch = (SIDE * 0.9) / across;
    const centre: Point = [50 + pitch * (column + 0.5) + row * 0.3, 50 + pitch * (row + 0.5) + column * 0.3];
    return shape(circle(centre, pitch * 0.36, 32), 1 + (i % 2));
  });
  return picture(dots);
}

/** Long thin lines across the picture in two directions, each over the others before it. */
export function hatchedPicture(count: number): LevelMap {
  const lines = Array.from({ length: count }, (_, i) => {
    const from = ((i + 0.5) / count) * SIDE * 1.6 - SIDE * 0.6;
    const rise = i % 2 === 0 ? SIDE * 0.6 : -SIDE * 0.6;
    const top = i % 2 === 0 ? from : from + SIDE * 0.6;
    const ring: Ring = [
      [0, top],
      [SIDE, top + rise],
      [SIDE, top + rise + 2],
      [0, top + 2],
    ];
    return shape(ring, 1 + (i % 2));
  });
  return picture(lines);
}

/** A copy that shares nothing, for which nothing is kept yet. */
export function freshCopy({ shapes, ...map }: LevelMap): LevelMap {
  return {
    ...map,
    shapes: shapes.map(({ rings, ...rest }) => ({ ...rest, rings: rings.map((ring) => ring.slice()) })),
  };
}

function picture(shapes: readonly LevelShape[]): LevelMap {
  return { width: SIDE, height: SIDE, background: BACKGROUND, shapes };
}

function shape(ring: Ring, level: number, rule: FillRule = "nonzero"): LevelShape {
  return { level, rule, rings: [ring] };
}

function wave(radius: number, edges: number, level: number): LevelShape {
  const ring = Array.from({ length: edges }, (_, i): Point => {
    const angle = (i / edges) * 2 * Math.PI;
    const r = SIDE * radius * (1 + WAVES.depth * Math.sin(WAVES.count * angle));
    return [SIDE / 2 + r * Math.cos(angle), SIDE / 2 + r * Math.sin(angle)];
  });
  return shape(ring, level);
}

function circle([x, y]: Point, radius: number, edges: number): Ring {
  return Array.from({ length: edges }, (_, i): Point => {
    const angle = (i / edges) * 2 * Math.PI;
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}
