import type { LevelMap, LevelShape } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { type LayerDrawing, layerShapes, type Placed } from "./compose.ts";
import type { DrawnSource } from "./draw-file.ts";
import { drawSource } from "./draw-source.ts";
import { eachOf } from "./each-of.ts";
import { levelChoice } from "./level-choice.ts";
import type { LayerMatter, PieceMatter } from "./schema.ts";
import type { Studio } from "./studio.ts";

/** A layer's shapes in the box, its field, and notes about the file that it draws. */
export interface ReadLayer {
  readonly at: FieldPath;
  readonly shapes: readonly LevelShape[];
  readonly notes: readonly string[];
}

/** Points of all layers: as many as one picture file may have. */
const MOST_POINTS = 5_000_000;

/** Draws layers, given from front to back. @throws ProblemError, KitError */
export function readLayers(layers: readonly LayerMatter[], at: FieldPath, studio: Studio): ReadLayer[] {
  let points = 0;
  return eachOf(
    layers.map((layer, i) => () => {
      const read = readLayer(layer, [...at, i], studio);
      points += pointsOf(read.shapes);
      if (points <= MOST_POINTS) return read;
      throw problem(read.at, { given: say.frontCrowded(), allowed: say.layerPoints(), remedy: say.frontSimplify() });
    }),
  );
}

/** Layers, given from front to back, as a picture: the last is painted first. */
export function mapOfLayers(
  layers: readonly ReadLayer[],
  box: Pick<LevelMap, "width" | "height" | "background">,
): LevelMap {
  return { ...box, shapes: layers.toReversed().flatMap(({ shapes }) => shapes) };
}

function readLayer(layer: LayerMatter, at: FieldPath, studio: Studio): ReadLayer {
  const choice = levelChoice(layer, at, { levels: studio.levels, whole: false });
  if (layer.join.length > 0 && choice.kind !== "one") {
    const advice = { given: say.layerJoinLevels(), allowed: say.layerJoinOne(), remedy: say.layerJoinRemedy() };
    throw problem([...at, "join"], advice);
  }
  const drawn = drawSource(layer, { at, place: layer, choice }, studio);
  const pieces = (key: "join" | "cut"): Placed[] =>
    eachOf(layer[key].map((piece, i) => () => readPiece(piece, [...at, key, i], studio)));
  const drawing: LayerDrawing = { at, drawn, place: layer, join: pieces("join"), cut: pieces("cut") };
  return { at, shapes: layerShapes(drawing, studio.box!), notes: placedNotes(drawn) };
}

function readPiece(piece: PieceMatter, at: FieldPath, studio: Studio): Placed {
  const { trace = "silhouette" } = piece;
  if (trace !== "silhouette") {
    const advice = { given: say.checkGiven({ value: trace }), allowed: say.layerPieceTrace() };
    throw problem([...at, "trace"], { ...advice, remedy: say.checkCorrectValue() });
  }
  return {
    at,
    place: piece,
    drawn: drawSource(piece, { at, place: piece, choice: { kind: "one", level: 1 } }, studio),
  };
}

/** Notes with their places: content/kits/moon/moon.svg:7. */
export function placedNotes({ file, notes }: DrawnSource): string[] {
  return notes.map(({ line, message }) =>
    say.frontPictureNote({ place: [file, line].filter((part) => part !== undefined).join(":"), note: message }),
  );
}

function pointsOf(shapes: readonly LevelShape[]): number {
  return shapes.reduce((sum, { rings }) => sum + rings.reduce((points, ring) => points + ring.length, 0), 0);
}
