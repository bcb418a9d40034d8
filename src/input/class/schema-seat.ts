import { z } from "zod";
import { BOUNDS } from "../../core/kit/bounds.ts";
import * as say from "../../words/messages.ts";
import { choice, count, described, length, words } from "../files/schema-fields.ts";
import { bookSchema } from "../kit/schema-book.ts";
import { borderLeaves } from "../kit/schema-fit.ts";

/** Columns of the books table that say how the kit is matched to it. */
export const FIT_COLUMNS = ["height", "head", "borderBefore", "borderAfter", "foldStyle"] as const;

/** How many times the kits' estimate someone takes. */
export const pace = (about: () => string) =>
  z
    .number()
    .min(0.2)
    .max(5)
    .meta(described(() => say.fieldPace({ about: about() })));

const seatBook = bookSchema.omit({ square: true, boardThickness: true }).meta(described(say.fieldSeatBook));

const seatFit = z
  .strictObject({
    height: length(say.fieldSeatHeight, BOUNDS.pictureHeight).optional(),
    head: length(say.fieldSeatHead, BOUNDS.head).optional(),
    borderLeaves: borderLeaves(say.fieldSeatBorderLeaves).optional(),
    foldStyle: choice(say.fieldSeatFoldStyle, ["single", "stepped"]).optional(),
    depths: z
      .array(length(say.fieldSeatDepth, BOUNDS.depth))
      .min(BOUNDS.levels.least)
      .max(BOUNDS.levels.most)
      .optional()
      .meta(described(say.fieldSeatDepths)),
  })
  .meta(described(say.fieldSeatFit));

const seatLight = z
  .strictObject({
    diameter: length(say.fieldSeatLightDiameter, BOUNDS.lightDiameter).optional(),
    height: length(say.fieldSeatLightHeight, BOUNDS.lightHeight).optional(),
  })
  .meta(described(say.fieldSeatLight));

/** A seat of a class, as the teacher writes it. */
export const seatSchema = z
  .strictObject({
    seat: count(say.fieldSeatNumber, BOUNDS.seat),
    kit: words(say.fieldSeatKit).optional(),
    book: seatBook.optional(),
    fit: seatFit.optional(),
    light: seatLight.optional(),
    pace: pace(say.fieldSeatPace).optional(),
  })
  .meta(described(say.fieldSeat));

/** A row of the books table after its texts were read. */
export const bookRow = z.strictObject({ ...seatSchema.shape, fit: seatFit.optional() });
