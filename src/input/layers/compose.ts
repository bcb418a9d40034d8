import { mapPoint } from "../../core/geometry/affine.ts";
import { type Area, areaOfRings, subtract, unite } from "../../core/geometry/area.ts";
import type { Size } from "../../core/geometry/box.ts";
import type { Ring } from "../../core/geometry/point.ts";
import { thinOut } from "../../core/geometry/simplify.ts";
import type { LevelShape } from "../../core/picture/level-map.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { uncuttable } from "../picture/crowded.ts";
import type { Drawn } from "../picture/drawn.ts";
import { type Place, placement } from "./place.ts";

/** Something drawn, and where it stands in the picture's box. */
export interface Placed {
  readonly at: FieldPath;
  readonly drawn: Pick<Drawn, "width" | "height" | "shapes">;
  readonly place: Place;
}

/** A layer with what is united with it and what is taken out of it. */
export interface LayerDrawing extends Placed {
  readonly join: readonly Placed[];
  readonly cut: readonly Placed[];
}

/** A layer in its box, mm, not yet joined and cut. */
export interface LaidOut {
  readonly at: FieldPath;
  readonly own: readonly LevelShape[];
  readonly join: readonly LevelShape[];
  readonly cut: readonly LevelShape[];
}

/** The box's longer side in errors of outlines that are joined or cut, which have fewer points for it. */
const ERRORS_PER_SIDE = 50_000;

/** Lays a layer out in its box. */
export function laidOut(layer: LayerDrawing, box: Size): LaidOut {
  const own = placedShapes(layer, box);
  if (!isWorked(layer)) return { at: layer.at, own, join: [], cut: [] };
  const tolerance = Math.max(box.width, box.height) / ERRORS_PER_SIDE;
  const thin = (shape: LevelShape): LevelShape => ({ ...shape, rings: thinOut(shape.rings, tolerance) });
  const pieces = (placed: readonly Placed[]): LevelShape[] =>
    placed.flatMap((piece) => placedShapes(piece, box).map(thin));
  return { at: layer.at, own: own.map(thin), join: pieces(layer.join), cut: pieces(layer.cut) };
}

/** The shapes of layers in painter order, joined and cut. @throws ProblemError where all of them together are too crowded for that */
export function layerShapes(layers: readonly LaidOut[], box: Size): LevelShape[][] {
  const worked: Ring[] = [];
  for (const layer of layers.filter(isWorked)) {
    worked.push(...[layer.own, layer.join, layer.cut].flat().flatMap(({ rings }) => rings));
    const crowded = uncuttable(worked, box);
    if (crowded) throw problem(layer.at, crowded);
  }
  return layers.map((layer) => (isWorked(layer) ? workedShapes(layer) : [...layer.own]));
}

function isWorked({ join, cut }: { readonly join: readonly unknown[]; readonly cut: readonly unknown[] }): boolean {
  return join.length > 0 || cut.length > 0;
}

function workedShapes({ own, join, cut }: LaidOut): LevelShape[] {
  const level = own[0]?.level ?? 1;
  const whole = join.length > 0 ? [{ level, area: areaOf([...own, ...join]) }] : own.map(areaAtLevel);
  const taken = areaOf(cut);
  return whole.map(({ level: at, area }) => ({ level: at, rule: "nonzero", rings: subtract(area, taken) }));
}

function areaAtLevel({ level, rings, rule }: LevelShape): { readonly level: number; readonly area: Area } {
  return { level, area: areaOfRings(rings, rule) };
}

function areaOf(shapes: readonly LevelShape[]): Area {
  return unite(
    [],
    shapes.flatMap(({ rings, rule }) => areaOfRings(rings, rule)),
  );
}

function placedShapes({ drawn, place }: Placed, box: Size): LevelShape[] {
  const map = placement(drawn, place, box);
  return drawn.shapes.map(({ level, rule, rings }) => ({
    level,
    rule,
    rings: rings.map((ring) => ring.map((point) => mapPoint(map, point))),
  }));
}
