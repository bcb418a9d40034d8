import { z } from "zod";
import { BOUNDS } from "../../core/kit/bounds.ts";
import { EMPTY_FOLDS } from "../../core/kit/corner-wish.ts";
import { FOLD_STYLES } from "../../core/spans/fold-style.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";
import { rulerStep } from "../../core/units/ruler.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import { choice, count, described, leaf, leftOut, length, list, number, reference } from "../files/schema-fields.ts";

const solvable = z.literal("solve");

/** How far a book is opened. */
export const degrees = z
  .number()
  .min(BOUNDS.opening.least)
  .max(BOUNDS.opening.most)
  .register(FACTS, { measure: "degrees" });

/** The finest step of a ruler in the kit's units, as authors type it. */
const finestStep = (): string =>
  say.fieldFitMarkStepUsual({
    mm: String(rulerStep("mm", "fine")),
    parts: String(Math.round(MM_PER_INCH / rulerStep("in", "fine"))),
  });

export const borderBefore = count(say.fieldBorderBefore, BOUNDS.borderLeaves);
export const borderAfter = count(say.fieldBorderAfter, BOUNDS.borderLeaves);

/** Whole leaves before and after the picture. */
export const borderLeaves = (about: () => string) => z.tuple([borderBefore, borderAfter]).meta(described(about));

/** How leaves are folded by corners. */
const cornerSchema = z
  .strictObject({
    levels: list(say.fieldFitCornerLevels, reference(say.fieldFitCornerLevel), 0, BOUNDS.levels.most).default([]),
    empty: choice(say.fieldFitCornerEmpty, EMPTY_FOLDS).default("line"),
  })
  .meta(described(say.fieldFitCorner));

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
      .meta(described(say.fieldFitPictureLeaves))
      .register(FACTS, { about: say.fieldFitPictureLeavesAbout }),
    head: leftOut(length(say.fieldFitHead, BOUNDS.head), say.fieldFitHeadUsual),
    height: z
      .union([solvable, length(say.fieldFitHeightLength, BOUNDS.pictureHeight)])
      .meta(described(() => say.fieldFitHeight({ help: say.fieldLengthHelp() })))
      .register(FACTS, { about: say.fieldFitHeightLength }),
    opening: leftOut(z.union([solvable, degrees]).meta(described(say.fieldFitOpening)), say.fieldFitOpeningUsual),
    view: choice(say.fieldFitView, ["front", "along"]).default("front"),
    spine: choice(say.fieldFitSpine, ["flat", "rounded"]).default("flat"),
    markStep: leftOut(length(say.fieldFitMarkStep, BOUNDS.markStep), finestStep),
    leastTab: length(say.fieldFitLeastTab, BOUNDS.leastTab).default(3),
    foldStyle: choice(say.fieldFitFoldStyle, FOLD_STYLES).default("single"),
    corner: cornerSchema.prefault({}),
    cutWith: choice(say.fieldFitCutWith, ["knife", "scissors"]).default("knife"),
    tackWith: choice(say.fieldFitTackWith, ["glue", "dots"]).default("dots"),
    gutterClearance: length(say.fieldFitGutterClearance, BOUNDS.gutterClearance).default(5),
    flapBulk: number(say.fieldFitFlapBulk, BOUNDS.flapBulk.least, BOUNDS.flapBulk.most).default(2),
    batch: count(say.fieldFitBatch, BOUNDS.batch).default(20),
    lostLeaves: z.array(leaf(say.fieldFitLostLeaf)).default([]).meta(described(say.fieldFitLostLeaves)),
  })
  .meta(described(say.fieldFit));
