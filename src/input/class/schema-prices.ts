import { z } from "zod";
import { BOUNDS } from "../../core/kit/bounds.ts";
import { PRICED } from "../../core/kit/supply-id.ts";
import * as say from "../../words/messages.ts";
import { FACTS } from "../files/schema-facts.ts";
import { count, described, list, price, reference } from "../files/schema-fields.ts";

/** A teacher's own prices; that of a printed side among them. */
export const classPrices = z
  .partialRecord(z.enum([...PRICED, "page"]), price(say.fieldPrice))
  .meta(
    described(() =>
      say.fieldClassPrices({
        prices: say.fieldPrices({ about: say.fieldPricesAbout(), keys: [...PRICED, "page"].join(", ") }),
      }),
    ),
  )
  .register(FACTS, { about: say.fieldPricesAbout });

/** How many of a thing are sold together. */
export const packList = z
  .partialRecord(z.enum(PRICED), count(say.fieldPack, BOUNDS.pack))
  .meta(described(() => say.fieldPacks({ keys: PRICED.join(", ") })));

/** Prices by the size of sheets. */
export const sheetPriceList = list(
  say.fieldSheetPrices,
  z
    .strictObject({
      sheet: reference(say.fieldSheetPriceSheet),
      card: price(say.fieldSheetPriceEach).optional(),
      acetate: price(say.fieldSheetPriceEach).optional(),
    })
    .meta(described(say.fieldSheetPrice)),
  0,
  6,
);
