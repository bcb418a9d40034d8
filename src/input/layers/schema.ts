import { z } from "zod";
import * as say from "../../words/messages.ts";
import { type About, described, leftOut, length, list, number, reference } from "../files/schema-fields.ts";
import { span } from "../files/span.ts";
import { TEXT } from "../files/text-bounds.ts";
import { wordFields } from "../lettering/schema.ts";
import { outlineFields } from "../outlines/schema.ts";
import { cropSchema } from "../picture/crop-schema.ts";
import { selectionSchema } from "../picture/selection.ts";
import { rasterFields } from "../raster/raster-fields.ts";

/** Sides of a picture's box, mm. */
const BOX = { kind: "length", least: 5, most: 2000 } as const;

/** Where the middle of a layer may lie, and how large it may be. */
const PLACE = { least: -2000, most: 2000, mostShare: 10 } as const;
const SIDE = { least: 0.1, most: 2000, mostShare: 10 } as const;

/** As many layers, and as many pieces that are joined to or cut out of one, as a picture for folding can show. */
const MOST_LAYERS = 40;
const MOST_PIECES = 20;

/** Shapes of a file that are picked for one level. */
const named = selectionSchema.meta(described(() => say.pictureFieldNames({ shapes: say.selectListField() })));

/** What draws: a file, words or an outline, of which each layer has one. */
export const sourceFields = {
  file: leftOut(reference(say.pictureFieldFile), say.pictureFieldFileUsual),
  names: leftOut(named, say.pictureFieldNamesUsual),
  crop: leftOut(cropSchema, say.fieldPictureCropUsual),
  ...rasterFields,
  ...wordFields,
  ...outlineFields,
};

/** Where a layer stands in the picture's box. */
const placeFields = {
  at: leftOut(
    z.tuple([span(say.layerAcross, PLACE), span(say.layerDown, PLACE)]).meta(described(say.layerAt)),
    say.layerAtUsual,
  ),
  width: leftOut(span(say.layerWidth, SIDE), say.layerSideUsual),
  height: leftOut(span(say.layerHeight, SIDE), say.layerSideUsual),
  turn: number(say.layerTurn, -360, 360).default(0),
  mirror: z.boolean().meta(described(say.layerMirror)).default(false),
};

const levelName = reference(say.pictureFieldLevel);

const levelFields = {
  level: leftOut(levelName, say.pictureFieldLevelUsual),
  levels: leftOut(
    z
      .union([z.record(z.string().max(TEXT.path), selectionSchema), z.array(levelName).min(1).max(12)])
      .meta(described(say.pictureFieldLevels)),
    say.pictureFieldLevelsUsual,
  ),
};

const sourceSchema = z.strictObject(sourceFields);

/** Something that is drawn into the box of a picture without a level of its own. */
export const pieceSchema = z.strictObject({ ...sourceFields, ...placeFields }).meta(described(say.layerPiece));

/** Sources that are joined to another one or cut out of it. */
export const pieces = (about: About) => list(about, pieceSchema, 0, MOST_PIECES).default([]);

const layerSchema = z
  .strictObject({
    ...levelFields,
    ...sourceFields,
    ...placeFields,
    join: pieces(say.layerJoin),
    cut: pieces(say.layerCut),
  })
  .meta(described(say.layerLayer));

/** A kit's picture: one source that fills it, or layers from front to back. */
export const pictureSchema = z
  .strictObject({
    ...levelFields,
    ...sourceFields,
    width: leftOut(length(say.pictureFieldWidth, BOX), say.pictureFieldSideUsual),
    height: leftOut(length(say.pictureFieldHeight, BOX), say.pictureFieldSideUsual),
    layers: list(say.layerLayers, layerSchema, 1, MOST_LAYERS).optional(),
  })
  .meta(described(say.fieldPicture));

export type PictureMatter = z.output<typeof pictureSchema>;
export type LayerMatter = z.output<typeof layerSchema>;
export type PieceMatter = z.output<typeof pieceSchema>;

export type SourceMatter = z.output<typeof sourceSchema>;
