import { z } from "zod";
import { BOUNDS } from "../../core/kit/bounds.ts";
import { OF_A_BOOK } from "../../core/refit/refit.ts";
import { FOLD_STYLES } from "../../core/spans/fold-style.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import { choice, count, described, leftOut, length, reference } from "../files/schema-fields.ts";
import { bookSchema } from "../kit/schema-book.ts";
import { borderAfter, borderBefore, borderLeaves, degrees } from "../kit/schema-fit.ts";

/** How many times the kits' estimate someone takes. */
export const pace = (about: () => string) =>
  z
    .number()
    .min(0.2)
    .max(5)
    .meta(described(() => say.fieldPace({ about: about() })))
    .register(FACTS, { about });

export const seatBook = bookSchema.omit({ square: true, boardThickness: true }).meta(described(say.fieldSeatBook));

const seatOpening = degrees
  .meta(described(say.fieldSeatOpening))
  .register(FACTS, { about: say.fieldSeatOpening, measure: "degrees" });

const seatFit = z
  .strictObject({
    height: leftOut(length(say.fieldSeatHeight, BOUNDS.pictureHeight), say.fieldAsTheKit),
    head: leftOut(length(say.fieldSeatHead, BOUNDS.head), say.fieldAsTheKit),
    opening: leftOut(seatOpening, say.fieldAsTheKit),
    pictureLeaves: leftOut(count(say.fieldSeatPictureLeaves, BOUNDS.pictureLeaves), say.fieldAsTheKit),
    borderLeaves: leftOut(borderLeaves(say.fieldSeatBorderLeaves), say.fieldAsTheKit),
    foldStyle: leftOut(choice(say.fieldSeatFoldStyle, FOLD_STYLES), say.fieldAsTheKit),
    depths: leftOut(
      z
        .array(length(say.fieldSeatDepth, BOUNDS.depth))
        .min(BOUNDS.levels.least)
        .max(BOUNDS.levels.most)
        .meta(described(say.fieldSeatDepths)),
      say.fieldAsTheKit,
    ),
  })
  .meta(described(say.fieldSeatFit));

const seatLight = z
  .strictObject({
    diameter: leftOut(length(say.fieldSeatLightDiameter, BOUNDS.lightDiameter), say.fieldAsTheKit),
    height: leftOut(length(say.fieldSeatLightHeight, BOUNDS.lightHeight), say.fieldAsTheKit),
  })
  .meta(described(say.fieldSeatLight));

/** A seat of a class, as the teacher writes it. */
export const seatSchema = z
  .strictObject({
    seat: count(say.fieldSeatNumber, BOUNDS.seat),
    kit: leftOut(reference(say.fieldSeatKit), say.fieldSeatKitUsual),
    book: leftOut(seatBook, say.fieldSeatBookUsual),
    fit: leftOut(seatFit, say.fieldAsTheKit),
    light: leftOut(seatLight, say.fieldAsTheKit),
    pace: leftOut(pace(say.fieldSeatPace), say.fieldSeatPaceUsual),
  })
  .meta(described(say.fieldSeat));

/** A row of the books table after its texts were read. */
export const bookRow = z.strictObject({ ...seatSchema.shape, fit: seatFit.optional() });

/** Columns of the books table that say how the kit is matched to it. */
export const FIT_COLUMNS = [
  "height",
  "head",
  "opening",
  "pictureLeaves",
  "borderBefore",
  "borderAfter",
  "foldStyle",
  "depths",
] as const;

/** Columns of a seat's light, each with its key in the front matter. */
export const LIGHT_COLUMNS: Readonly<Record<string, keyof typeof seatLight.shape>> = {
  lightDiameter: "diameter",
  lightHeight: "height",
};

/** The columns of the books table in their order, each with the field that its cells stand for. */
export const BOOK_COLUMNS: Readonly<Record<string, z.ZodType>> = {
  seat: seatSchema.shape.seat,
  kit: seatSchema.shape.kit,
  ...Object.fromEntries(OF_A_BOOK.map((column) => [column, seatBook.shape[column]])),
  plates: leftOut(reference(say.fieldColumnPlates), say.fieldColumnPlatesUsual),
  height: seatFit.shape.height,
  head: seatFit.shape.head,
  opening: seatFit.shape.opening,
  pictureLeaves: seatFit.shape.pictureLeaves,
  borderBefore: leftOut(borderBefore, say.fieldAsTheKit),
  borderAfter: leftOut(borderAfter, say.fieldAsTheKit),
  foldStyle: seatFit.shape.foldStyle,
  depths: leftOut(reference(say.fieldColumnDepths), say.fieldAsTheKit),
  ...Object.fromEntries(Object.entries(LIGHT_COLUMNS).map(([column, key]) => [column, seatLight.shape[key]])),
  pace: seatSchema.shape.pace,
};
