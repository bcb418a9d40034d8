import { z } from "zod";
import { PRICED } from "../../core/kit/supply-id.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import { amount, described, leftOut, number, price, seconds, words } from "../files/schema-fields.ts";
import { TEXT } from "../files/text-bounds.ts";

/** An author's or a teacher's own prices. */
export const priceList = z
  .partialRecord(z.enum(PRICED), price(say.fieldPrice))
  .meta(described(() => say.fieldPrices({ about: say.fieldPricesAbout(), keys: PRICED.join(", ") })))
  .register(FACTS, { about: say.fieldPricesAbout });

/** Usual seconds of one cut, with each tool: estimates (common practice, no source). */
export const CUT_SECONDS = { knife: 6, scissors: 4 } as const;

/** Working times, each with a usual one. */
export const rateSchema = z
  .strictObject({
    leaf: seconds(say.fieldRateLeaf).default(12),
    score: seconds(say.fieldRateScore).default(6),
    mark: seconds(say.fieldRateMark).default(4),
    cut: leftOut(seconds(say.fieldRateCut), () => say.fieldRateCutUsual(CUT_SECONDS)),
    fold: seconds(say.fieldRateFold).default(10),
    check: seconds(say.fieldRateCheck).default(20),
    tack: seconds(say.fieldRateTack).default(15),
    notch: seconds(say.fieldRateNotch).default(25),
    part: seconds(say.fieldRatePart).default(420),
    first: number(say.fieldRateFirst, 1, 5).default(1.75),
  })
  .meta(described(say.fieldRates));

/** How long glued things lie still, minutes. */
export const dryingSchema = z
  .strictObject({
    glue: number(say.fieldDryingGlue, 0, 2880).default(30),
    frame: number(say.fieldDryingFrame, 0, 2880).default(720),
  })
  .meta(described(say.fieldDrying));

/** A supply beside the computed ones. */
export const supplySchema = z
  .strictObject({
    item: words(say.fieldSupplyItem, TEXT.line),
    quantity: amount(say.fieldSupplyQuantity).default(1),
    unit: words(say.fieldSupplyUnit, TEXT.unit).default(() => say.frontPieces()),
    price: price(say.fieldSupplyPrice).optional(),
  })
  .meta(described(say.fieldSupply));
