import { mapPoint } from "../../core/geometry/affine.ts";
import { type Area, areaOfRings, subtract, unite } from "../../core/geometry/area.ts";
import type { Size } from "../../core/geometry/box.ts";
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

/** The shapes of a layer in its box, mm, in painter order. @throws ProblemError where they are too crowded to be cut */
export function layerShapes(layer: LayerDrawing, box: Size): LevelShape[] {
  const own = placedShapes(layer, box);
  if (layer.join.length === 0 && layer.cut.length === 0) return own;
  const joined = layer.join.map((piece) => areaOf(piece, box));
  const cut = layer.cut.reduce<Area>((sum, piece) => unite(sum, areaOf(piece, box)), []);
  checkCuttable(own, layer.at, box);
  const areas = own.map(({ level, rule, rings }) => ({ level, area: areaOfRings(rings, rule) }));
  const whole = joined.length > 0 ? unitedWith(areas, joined) : areas;
  return whole.map(({ level, area }) => ({ level, rule: "nonzero", rings: subtract(area, cut) }));
}

/** One area of a layer with what is joined to it. */
function unitedWith(
  areas: readonly { readonly level: number; readonly area: Area }[],
  joined: readonly Area[],
): { readonly level: number; readonly area: Area }[] {
  const all = [...areas.map(({ area }) => area), ...joined];
  const level = areas[0]?.level ?? 1;
  return [{ level, area: all.reduce<Area>((sum, area) => unite(sum, area), []) }];
}

function areaOf(piece: Placed, box: Size): Area {
  const shapes = placedShapes(piece, box);
  checkCuttable(shapes, piece.at, box);
  return shapes.reduce<Area>((sum, { rings, rule }) => unite(sum, areaOfRings(rings, rule)), []);
}

function checkCuttable(shapes: readonly LevelShape[], at: FieldPath, box: Size): void {
  const rings = shapes.flatMap((shape) => shape.rings);
  const crowded = uncuttable(rings, box);
  if (crowded) throw problem(at, crowded);
}

function placedShapes({ drawn, place }: Placed, box: Size): LevelShape[] {
  const map = placement(drawn, place, box);
  return drawn.shapes.map(({ level, rule, rings }) => ({
    level,
    rule,
    rings: rings.map((ring) => ring.map((point) => mapPoint(map, point))),
  }));
}
