import { overlaps } from "../../core/geometry/overlaps.ts";
import type { Ring } from "../../core/geometry/point.ts";
import type { LevelMap } from "../../core/picture/level-map.ts";
import { layersOf } from "../../core/window/region.ts";
import * as say from "../../words/messages.ts";
import { type Advice, problem } from "../files/problem.ts";

/** Pairs of edges that stand beside each other: a detailed motif has a tenth of that many. */
const MOST_OVERLAPS = 2_000_000;

/** How often a level's shapes and those that cover it may take turns. */
const MOST_LAYERS = 200;

/** Points of outlines that are cut. */
const MOST_POINTS = 300_000;

/** Sides of a picture whose coordinates the polygon library keeps apart and can still multiply. */
const SIDE = { least: 1e-3, most: 1e7 } as const;

/** How far outlines may lie outside their picture, in sides of it. */
const MOST_SIDES = 1000;

type Box = Pick<LevelMap, "width" | "height">;

/** What speaks against a picture as a motif, which is cut in the size in which it is drawn. */
export function uncuttable(rings: readonly Ring[], box: Box): Advice | undefined {
  const sides = [box.width, box.height];
  return sides.every((side) => side >= SIDE.least && side <= SIDE.most) ? tooCrowded(rings, box) : outOfScale();
}

/** Whether a window can be cut from a level of a picture. @throws ProblemError */
export function checkOutline(map: LevelMap, level: number): void {
  const rings = map.shapes.flatMap((shape) => shape.rings);
  const interleaved = layersOf(map, level).length > MOST_LAYERS;
  const advice = interleaved
    ? { given: say.frontInterleaved(), allowed: say.frontCuttable(), remedy: say.frontGroupLevel() }
    : tooCrowded(rings, map);
  if (advice) throw problem(["insert", "outline"], advice);
}

function tooCrowded(rings: readonly Ring[], { width, height }: Box): Advice | undefined {
  const points = rings.reduce((sum, ring) => sum + ring.length, 0);
  if (points > MOST_POINTS || overlaps(rings) > MOST_OVERLAPS)
    return { given: say.frontCrowded(), allowed: say.frontCuttable(), remedy: say.frontSimplify() };
  const most = MOST_SIDES * Math.max(width, height);
  const far = rings.some((ring) => ring.some(([x, y]) => Math.abs(x) > most || Math.abs(y) > most));
  return far ? outOfScale() : undefined;
}

function outOfScale(): Advice {
  return { given: say.frontOutOfScale(), allowed: say.frontCuttable(), remedy: say.frontScale() };
}
