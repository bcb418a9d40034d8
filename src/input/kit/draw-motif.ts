import { type Area, areaOfRings, intersect, rectangle, unite } from "../../core/geometry/area.ts";
import { boxOf, type Size } from "../../core/geometry/box.ts";
import type { LevelShape } from "../../core/picture/level-map.ts";
import type { Motif } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { eachOf } from "../files/each-of.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { type LaidOut, laidOut, layerShapes } from "../layers/compose.ts";
import { FILLING, placedSize } from "../layers/place.ts";
import { type Piece, placedNotes, readPiece } from "../layers/read-layers.ts";
import type { Studio } from "../layers/studio.ts";
import { uncuttable } from "../picture/crowded.ts";
import type { DrawnMotif } from "./drawn-motif.ts";
import { lightened } from "./lightened.ts";
import type { StatedMotif } from "./schema-motif.ts";

/** Draws a motif, joined and cut; `shelf` is the one that it takes from there. @throws ProblemError, KitError */
export function drawMotif(stated: StatedMotif, at: FieldPath, studio: Studio, shelf: Motif | undefined): DrawnMotif {
  if (shelf && stated.join.length === 0 && stated.cut.length === 0)
    return { area: shelf.area, size: extentOf(shelf.area), notes: [] };
  const source = shelf ? shelfPiece(shelf, at) : readPiece(pieceOf(stated), at, studio);
  const size = placedSize(source.drawn, { ...FILLING, ...sidesInMm(stated) }, studio.box!);
  const within = { ...studio, box: size, tall: size.height };
  const pieces = (key: "join" | "cut"): Piece[] =>
    eachOf(stated[key].map((piece, n) => () => readPiece(piece, [...at, key, n], within)));
  const [join, cut] = [pieces("join"), pieces("cut")];
  const place = { ...FILLING, width: { mm: size.width }, height: { mm: size.height } };
  const laid = laidOut({ ...source, place, join, cut }, size);
  const shapes = workedShapes(stated.crop ? cropped(laid, size) : laid, size);
  const area = lightened(areaOf(shapes));
  if (area.length > 0) return { area, size, notes: [source, ...join, ...cut].flatMap((one) => placedNotes(one.drawn)) };
  const advice = { given: say.motifNothing(), allowed: say.motifSomething(), remedy: say.motifDrawSomething() };
  throw problem(at, advice);
}

/** The source of a motif by itself; of a file all that is drawn, unless a part is stated. */
function pieceOf(stated: StatedMotif): Parameters<typeof readPiece>[0] {
  const crop = stated.crop ?? (stated.file === undefined ? undefined : "drawing");
  return { ...stated, ...FILLING, ...sidesInMm(stated), crop };
}

function sidesInMm({ width, height }: StatedMotif): Pick<typeof FILLING, "width" | "height"> {
  const inMm = (side: typeof width) => (side && "mm" in side ? side : undefined);
  return { width: inMm(width), height: inMm(height) };
}

function shelfPiece({ area }: Motif, at: FieldPath): Piece {
  const { left, top } = boxOf(area);
  const rings = area.map((ring) => ring.map(([x, y]) => [x - left, y - top] as const));
  const shapes: LevelShape[] = [{ level: 1, rule: "nonzero", rings }];
  return { at, place: FILLING, drawn: { ...extentOf(area), shapes, notes: [], file: undefined } };
}

/** What lies outside a stated crop is not drawn. */
function cropped(laid: LaidOut, { width, height }: Size): LaidOut {
  const rings = intersect(areaOf(laid.own), [rectangle(0, 0, width, height)]);
  return { ...laid, own: [{ level: 1, rule: "nonzero", rings }] };
}

/** @throws ProblemError where there is too much to cut */
function workedShapes(laid: LaidOut, size: Size): LevelShape[] {
  const crowded = uncuttable(
    laid.own.flatMap(({ rings }) => rings),
    size,
  );
  if (crowded) throw problem(laid.at, crowded);
  return layerShapes([laid], size)[0]!;
}

function areaOf(shapes: readonly LevelShape[]): Area {
  return unite(
    [],
    shapes.flatMap(({ rings, rule }) => areaOfRings(rings, rule)),
  );
}

function extentOf(area: Area): Size {
  const { left, top, right, bottom } = boxOf(area);
  return { width: right - left, height: bottom - top };
}
