import { type Area, areaOfRings, outlinesOf, unite } from "../../core/geometry/area.ts";
import type { Motif } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { contentPath } from "../files/content-folder.ts";
import { toldOfFile } from "../files/file-message.ts";
import { KitError } from "../files/message.ts";
import type { Advice } from "../files/problem.ts";
import { entriesIn, readText } from "../files/read-file.ts";
import { type Readings, readListed } from "../files/readings.ts";
import { uncuttable } from "../picture/crowded.ts";
import { readPicture } from "../picture/read-picture.ts";
import type { PaintedShape } from "../svg/svg-picture.ts";
import { lightened } from "./lightened.ts";

/** Shapes of a motif that are left out one after the other to find the one that stands apart. */
const MOST_TRIED = 50;

/** Where a site's motifs stand below the project. */
const folder = (): string => contentPath("motifs");

/** The motifs of the site in `base`: every SVG in their folder, by name, and the messages about those that are no silhouette. */
export function readMotifs(base: string): Readings<Motif> {
  return readListed(
    () => toldOfFile(() => entriesIn(base, folder())).filter(({ name }) => name.toLowerCase().endsWith(".svg")),
    ({ name }) => readMotif(base, name),
  );
}

function readMotif(base: string, name: string): Motif {
  const file = `${folder()}/${name}`;
  const text = toldOfFile(() => readText({ base, file, kind: "motif" }));
  const shapes = shapesIn(file, text);
  const area = areaOf(shapes);
  const pieces = piecesOf(area);
  if (pieces === 1) return { name: name.replace(/\.svg$/i, ""), area };
  throw noMotif(file, pieces === 0 ? 1 : lineApart(shapes, pieces), pieces);
}

function shapesIn(file: string, text: string): readonly PaintedShape[] {
  const picture = readPicture(file, text, say.checkFieldMotif());
  const rings = picture.shapes.flatMap((shape) => shape.rings);
  const crowded = uncuttable(rings, picture);
  if (crowded) throw told(file, undefined, crowded);
  return picture.shapes;
}

function noMotif(file: string, line: number, pieces: number): KitError {
  const advice = { given: say.frontMotifPieces({ pieces }), allowed: say.frontMotifOne() };
  return told(file, line, { ...advice, remedy: say.frontJoinMotif({ pieces }) });
}

function told(file: string, line: number | undefined, advice: Advice): KitError {
  return new KitError([{ file, line, column: undefined, field: say.checkFieldMotif(), ...advice }]);
}

function areaOf(shapes: readonly PaintedShape[]): Area {
  const areas = shapes.flatMap(({ rings, rule }) => areaOfRings(rings, rule));
  return lightened(unite([], areas));
}

function piecesOf(area: Area): number {
  return outlinesOf(area).outer.length;
}

/** The line of a shape that stands apart from the others, the last one of them; of the first where there are too many to try. */
function lineApart(shapes: readonly PaintedShape[], pieces: number): number {
  const tried = shapes.length > MOST_TRIED ? [] : shapes;
  const apart = tried.findLast((shape) => piecesOf(areaOf(shapes.filter((other) => other !== shape))) < pieces);
  return (apart ?? shapes[0]!).line;
}
