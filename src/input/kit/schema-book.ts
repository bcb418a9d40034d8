import { z } from "zod";
import { leafNumber } from "../../core/book/leaf-number.ts";
import { BOUNDS } from "../../core/kit/bounds.ts";
import * as say from "../../words/messages.ts";
import { choice, count, described, leaf, leftOut, length } from "../files/schema-fields.ts";

const plate = z
  .strictObject({
    afterPage: count(say.fieldPlateAfterPage, BOUNDS.page),
    leaves: count(say.fieldPlateLeaves, BOUNDS.plateLeaves),
  })
  .meta(described(say.fieldPlate));

/** A closed book's measurements, of a kit or of a seat. */
export const bookSchema = z
  .strictObject({
    leafHeight: length(say.fieldBookLeafHeight, BOUNDS.leafHeight),
    leafWidth: length(say.fieldBookLeafWidth, BOUNDS.leafWidth),
    blockThickness: length(say.fieldBookBlockThickness, BOUNDS.blockThickness),
    leaves: count(say.fieldBookLeaves, BOUNDS.leaves),
    pageOneLeaf: leaf(say.fieldBookPageOneLeaf).default(leafNumber(1)),
    lastPage: leftOut(count(say.fieldBookLastPage, BOUNDS.page), say.fieldBookLastPageUsual),
    plates: z.array(plate).default([]).meta(described(say.fieldBookPlates)),
    direction: choice(say.fieldBookDirection, ["ltr", "rtl"]).default("ltr"),
    square: length(say.fieldBookSquare, BOUNDS.square).default(3),
    boardThickness: length(say.fieldBookBoardThickness, BOUNDS.boardThickness).default(2.5),
  })
  .meta(described(say.fieldBook));
