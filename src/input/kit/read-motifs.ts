import { type Area, areaOfRings, outlinesOf, unite } from "../../core/geometry/area.ts";
import type { Motif } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { toldOfFile } from "../files/file-message.ts";
import { KitError } from "../files/message.ts";
import type { Advice } from "../files/problem.ts";
import { entriesIn, readText } from "../files/read-file.ts";
import { type Readings, readListed } from "../files/readings.ts";
import { uncuttable } from "../picture/crowded.ts";
import { readPicture } from "../picture/read-picture.ts";
import type { PaintedShape } from "../svg/svg-picture.ts";

/** Shapes of a motif that are left out one after the other to find the one that stands apart. */
const MOST_TRIED = 50;

/** Where a site's motifs stand below the project. */
const FOLDER = "content/motifs";

/** The motifs of the site in `base`: every SVG in their folder, by name, and the messages about those that are no silhouette. */
export function readMotifs(base: string): Readings<Motif> {
  return readListed(
    () => toldOfFile(() => entriesIn(base, FOLDER)).filter(({ name }) => name.toLowerCase().endsWith(".svg")),
    ({ name }) => readMotif(base, name),
  );
}

function readMotif(base: string, name: string): Motif {
  const file = `${FOLDER}/${name}`;
  const field = say.checkFieldMotif();
  const picture = readPicture(
    file,
    toldOfFile(() => readText({ base, file, kind: "motif" })),
    field,
  );
  const { shapes } = picture;
  const tell = (line: number | undefined, advice: Advice): KitError =>
    new KitError([{ file, line, column: undefined, field, ...advice }]);
  const crowded = uncuttable(
    shapes.flatMap(({ rings }) => rings),
    picture,
  );
  if (crowded) throw tell(undefined, crowded);
  const area = areaOf(shapes);
  const pieces = piecesOf(area);
  if (pieces === 1) return { name: name.replace(/\.svg$/i, ""), area };
  const advice = { given: say.frontMotifPieces({ pieces }), allowed: say.frontMotifOne() };
  const line = pieces === 0 ? 1 : lineApart(shapes, pieces);
  throw tell(line, { ...advice, remedy: say.frontJoinMotif({ pieces }) });
}

function areaOf(shapes: readonly PaintedShape[]): Area {
  const areas = shapes.flatMap(({ rings, rule }) => areaOfRings(rings, rule));
  return unite([], areas);
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
