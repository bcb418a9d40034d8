import { z } from "zod";
import { PRICED } from "../../core/kit/supply-id.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import { amount, described, price, seconds, words } from "../files/schema-fields.ts";
import { TEXT } from "../files/text-bounds.ts";

/** An author's or a teacher's own prices. */
export const priceList = z
  .partialRecord(z.enum(PRICED), price(say.fieldPrice))
  .meta(described(() => say.fieldPrices({ about: say.fieldPricesAbout(), keys: PRICED.join(", ") })))
  .register(FACTS, { about: say.fieldPricesAbout });

/** Working times, each with a usual one. */
export const rateSchema = z
  .strictObject({
    leaf: seconds(say.fieldRateLeaf).default(12),
    score: seconds(say.fieldRateScore).default(6),
    mark: seconds(say.fieldRateMark).default(4),
    cut: seconds(say.fieldRateCut).default(6),
    fold: seconds(say.fieldRateFold).default(10),
    check: seconds(say.fieldRateCheck).default(20),
    tack: seconds(say.fieldRateTack).default(15),
    notch: seconds(say.fieldRateNotch).default(25),
    part: seconds(say.fieldRatePart).default(420),
  })
  .meta(described(say.fieldRates));

/** A supply beside the computed ones. */
export const supplySchema = z
  .strictObject({
    item: words(say.fieldSupplyItem, TEXT.line),
    quantity: amount(say.fieldSupplyQuantity).default(1),
    unit: words(say.fieldSupplyUnit, TEXT.unit).default(() => say.frontPieces()),
    price: price(say.fieldSupplyPrice).optional(),
  })
  .meta(described(say.fieldSupply));
