import { type Area, areaOfRings, outlinesOf, unite } from "../../core/geometry/area.ts";
import type { Motif } from "../../core/window/motif.ts";
import * as say from "../../words/messages.ts";
import { toldOfFile } from "../files/file-message.ts";
import { KitError } from "../files/message.ts";
import { entriesIn, readText } from "../files/read-file.ts";
import { type Readings, readListed } from "../files/readings.ts";
import type { PaintedShape } from "../svg/svg-picture.ts";
import { readPicture } from "./read-picture.ts";

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
  const { shapes } = readPicture(
    file,
    toldOfFile(() => readText({ base, file, kind: "motif" })),
    field,
  );
  const area = areaOf(shapes);
  const pieces = piecesOf(area);
  if (pieces === 1) return { name: name.replace(/\.svg$/i, ""), area };
  const advice = {
    given: say.frontMotifPieces({ pieces }),
    allowed: say.frontMotifOne(),
    remedy: say.frontJoinMotif({ pieces }),
  };
  const line = pieces === 0 ? 1 : lineApart(shapes, pieces);
  throw new KitError([{ file, line, column: undefined, field, ...advice }]);
}

function areaOf(shapes: readonly PaintedShape[]): Area {
  return shapes.reduce<Area>((all, shape) => unite(all, areaOfRings(shape.rings, shape.rule)), []);
}

function piecesOf(area: Area): number {
  return outlinesOf(area).outer.length;
}

/** The line of a shape that stands apart from the others, the last one of them. */
function lineApart(shapes: readonly PaintedShape[], pieces: number): number {
  const apart = shapes.findLast((shape) => piecesOf(areaOf(shapes.filter((other) => other !== shape))) < pieces);
  return (apart ?? shapes[0]!).line;
}
