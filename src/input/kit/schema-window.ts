import { z } from "zod";
import { BOUNDS } from "../../core/kit/bounds.ts";
import { SHEET_NAMES } from "../../core/packing/sheet-sizes.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import { choice, described, leftOut, length, list, reference, words } from "../files/schema-fields.ts";
import { TEXT } from "../files/text-bounds.ts";
import { cardField, motifSchema } from "./schema-motif.ts";

/** A battery light that stands inside the book. */
export const lightSchema = z
  .strictObject({
    in: leftOut(reference(say.fieldLightIn), say.fieldLightInUsual),
    diameter: length(say.fieldLightDiameter, BOUNDS.lightDiameter),
    height: length(say.fieldLightHeight, BOUNDS.lightHeight),
    clearance: length(say.fieldLightClearance, BOUNDS.lightClearance).default(1),
    setback: length(say.fieldLightSetback, BOUNDS.lightSetback).default(4),
    floor: z
      .union([z.literal("auto"), length(say.fieldLightFloorLength, BOUNDS.lightFloor)])
      .default("auto")
      .meta(described(() => say.fieldLightFloor({ help: say.fieldLengthHelp() })))
      .register(FACTS, { about: say.fieldLightFloorLength }),
    cells: words(say.fieldLightCells, TEXT.name).optional(),
  })
  .meta(described(say.fieldLight));

/** More than a window has room for. */
const MOST_MOTIFS = 24;

/** The window that closes the hole. */
export const insertSchema = z
  .strictObject({
    outline: reference(say.fieldInsertOutline),
    lip: length(say.fieldInsertLip, BOUNDS.lip).default(3),
    hinge: choice(say.fieldInsertHinge, ["left", "right"]).default("left"),
    panel: choice(say.fieldInsertPanel, ["wrap", "flat"]).default("wrap"),
    card: leftOut(cardField(say.fieldInsertCard), say.fieldCardUsual),
    motifs: list(say.fieldInsertMotifs, motifSchema, 0, MOST_MOTIFS).default([]),
  })
  .meta(described(say.fieldInsert));

const sheet = z
  .strictObject({
    name: words(say.fieldSheetName, TEXT.name),
    width: length(say.fieldSheetWidth, BOUNDS.sheetSide),
    height: length(say.fieldSheetHeight, BOUNDS.sheetSide),
  })
  .meta(described(say.fieldSheet));

/** Sheets that parts are cut from, of a kit or of a class. */
export const sheetSizes = z
  .array(z.union([z.enum(SHEET_NAMES), sheet]))
  .min(1)
  .max(6)
  .meta(described(() => say.fieldSheets({ about: say.fieldSheetsAbout() })))
  .register(FACTS, { about: say.fieldSheetsAbout });
