import { z } from "zod";
import { BOUNDS } from "../../core/kit/bounds.ts";
import * as say from "../../words/messages.ts";
import { choice, count, described, leaf, length, number } from "../files/schema-fields.ts";

const solvable = z.literal("solve");

/** Whole leaves before and after the picture. */
export const borderLeaves = (about: () => string) =>
  z
    .tuple([count(say.fieldBorderBefore, BOUNDS.borderLeaves), count(say.fieldBorderAfter, BOUNDS.borderLeaves)])
    .meta(described(about));

/** How a picture is matched to a book. */
export const fitSchema = z
  .strictObject({
    borderLeaves: borderLeaves(say.fieldFitBorderLeaves).default([10, 10]),
    pictureLeaves: z
      .union([
        choice(say.fieldFitPictureLeavesWord, ["fill", "solve"]),
        count(say.fieldFitPictureLeavesCount, BOUNDS.pictureLeaves),
      ])
      .default("fill")
      .meta(described(say.fieldFitPictureLeaves)),
    head: length(say.fieldFitHead, BOUNDS.head).optional(),
    height: z
      .union([solvable, length(say.fieldFitHeightLength, BOUNDS.pictureHeight)])
      .meta(described(() => say.fieldFitHeight({ help: say.fieldLengthHelp() }))),
    opening: z
      .union([solvable, z.number().min(BOUNDS.opening.least).max(BOUNDS.opening.most)])
      .optional()
      .meta(described(say.fieldFitOpening)),
    view: choice(say.fieldFitView, ["front", "along"]).default("front"),
    spine: choice(say.fieldFitSpine, ["flat", "rounded"]).default("flat"),
    markStep: length(say.fieldFitMarkStep, BOUNDS.markStep).optional(),
    leastTab: length(say.fieldFitLeastTab, BOUNDS.leastTab).default(3),
    foldStyle: choice(say.fieldFitFoldStyle, ["single", "stepped"]).default("single"),
    gutterClearance: length(say.fieldFitGutterClearance, BOUNDS.gutterClearance).default(5),
    flapBulk: number(say.fieldFitFlapBulk, 0, 20).default(2),
    batch: count(say.fieldFitBatch, BOUNDS.batch).default(20),
    lostLeaves: z.array(leaf(say.fieldFitLostLeaf)).default([]).meta(described(say.fieldFitLostLeaves)),
  })
  .meta(described(say.fieldFit));
