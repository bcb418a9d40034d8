import type { LevelMap, LevelShape } from "../../core/picture/level-map.ts";
import * as say from "../../words/messages.ts";
import { eachOf } from "../files/each-of.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { type LayerDrawing, laidOut, layerShapes, type Placed } from "./compose.ts";
import type { DrawnSource } from "./draw-file.ts";
import { drawSource } from "./draw-source.ts";
import { levelChoice } from "./level-choice.ts";
import type { LayerMatter, PieceMatter } from "./schema.ts";
import type { Studio } from "./studio.ts";

/** A layer's shapes in the box, its field, and notes about the file that it draws. */
export interface ReadLayer {
  readonly at: FieldPath;
  readonly shapes: readonly LevelShape[];
  readonly notes: readonly string[];
}

/** Draws layers, given from front to back. @throws ProblemError, KitError */
export function readLayers(layers: readonly LayerMatter[], at: FieldPath, studio: Studio): ReadLayer[] {
  const box = studio.box!;
  const drawn = eachOf(
    layers.map((layer, i) => () => {
      const { drawing, notes } = readLayer(layer, [...at, i], studio);
      return { laid: laidOut(drawing, box), notes };
    }),
  );
  const shapes = layerShapes(
    drawn.map(({ laid }) => laid),
    box,
  );
  return drawn.map(({ laid, notes }, i) => ({ at: laid.at, shapes: shapes[i]!, notes }));
}

/** Layers, given from front to back, as a picture: the last is painted first. */
export function mapOfLayers(
  layers: readonly ReadLayer[],
  box: Pick<LevelMap, "width" | "height" | "background">,
): LevelMap {
  return { ...box, shapes: layers.toReversed().flatMap(({ shapes }) => shapes) };
}

/** What a layer draws, and notes on the files of it and of its pieces. */
interface Drawing {
  readonly drawing: LayerDrawing;
  readonly notes: readonly string[];
}

function readLayer(layer: LayerMatter, at: FieldPath, studio: Studio): Drawing {
  const choice = levelChoice(layer, at, { levels: studio.levels, whole: false });
  if (layer.join.length > 0 && choice.kind !== "one") {
    const advice = { given: say.layerJoinLevels(), allowed: say.layerJoinOne(), remedy: say.layerJoinRemedy() };
    throw problem([...at, "join"], advice);
  }
  const drawn = drawSource(layer, { at, place: layer, choice }, studio);
  const pieces = (key: "join" | "cut"): Piece[] =>
    eachOf(layer[key].map((piece, i) => () => readPiece(piece, [...at, key, i], studio)));
  const [join, cut] = [pieces("join"), pieces("cut")];
  const notes = [drawn, ...[...join, ...cut].map((piece) => piece.drawn)].flatMap(placedNotes);
  return { drawing: { at, drawn, place: layer, join, cut }, notes };
}

/** A source that has no level of its own, drawn. */
export interface Piece extends Placed {
  readonly drawn: DrawnSource;
}

/** Draws a source as one silhouette. @throws ProblemError, KitError */
export function readPiece(piece: PieceMatter, at: FieldPath, studio: Studio): Piece {
  const { trace = "silhouette" } = piece;
  if (trace !== "silhouette") {
    const advice = { given: say.checkGiven({ value: trace }), allowed: say.layerPieceTrace() };
    throw problem([...at, "trace"], { ...advice, remedy: say.checkCorrectValue() });
  }
  const commission = { at, place: piece, choice: { kind: "one", level: 1 } } as const;
  return { at, place: piece, drawn: drawSource(piece, commission, studio) };
}

/** Notes with their places: content/kits/moon/moon.svg:7. */
export function placedNotes({ file, notes }: DrawnSource): string[] {
  return notes.map(({ line, message }) =>
    say.frontPictureNote({ place: [file, line].filter((part) => part !== undefined).join(":"), note: message }),
  );
}
