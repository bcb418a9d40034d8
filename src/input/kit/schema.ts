import { z } from "zod";
import { BOUNDS } from "../../core/kit/bounds.ts";
import * as say from "../../words/messages.ts";
import { choice, count, described, leftOut, length, list, number, words } from "../files/schema-fields.ts";
import type { JsonSchema } from "../files/schema-messages.ts";
import { TEXT } from "../files/text-bounds.ts";
import { pictureSchema } from "../layers/schema.ts";
import { bookSchema } from "./schema-book.ts";
import { creditSchema, licenceSchema, linkSchema, photoSchema, versionSchema } from "./schema-edition.ts";
import { fitSchema } from "./schema-fit.ts";
import { dryingSchema, priceList, rateSchema, supplySchema } from "./schema-supplies.ts";
import { insertSchema, lightSchema, sheetSizes } from "./schema-window.ts";

/** The front matter of a kit, as authors write it. */

const level = z
  .strictObject({
    name: words(say.fieldLevelName, TEXT.name),
    depth: leftOut(length(say.fieldLevelDepth, BOUNDS.depth), say.fieldLevelDepthUsual),
    line: leftOut(count(say.fieldLevelLine, BOUNDS.gaugeLine), say.fieldLevelLineUsual),
    background: leftOut(z.boolean().meta(described(say.fieldLevelBackground)), say.fieldLevelBackgroundUsual),
  })
  .meta(described(say.fieldLevel));

const gauge = z
  .strictObject({
    lines: z
      .array(length(say.fieldGaugeLine, BOUNDS.depth))
      .min(1)
      .max(BOUNDS.gaugeLine.most)
      .meta(described(say.fieldGaugeLines)),
    tile: length(say.fieldGaugeTile, BOUNDS.packingPiece).optional(),
  })
  .meta(described(say.fieldGauge));

export const frontMatter = z
  .strictObject({
    title: words(say.fieldKitTitle, TEXT.title),
    summary: words(say.fieldKitSummary, TEXT.summary),
    draft: z.boolean().default(false).meta(described(say.fieldKitDraft)),
    units: choice(say.fieldUnits, ["mm", "in"]).default("mm"),
    versions: list(say.fieldVersions, versionSchema, 0, 200).default([]),
    licence: licenceSchema.optional(),
    links: list(say.fieldLinks, linkSchema, 0, 12).default([]),
    credit: creditSchema.optional(),
    picture: pictureSchema,
    photos: list(say.fieldPhotos, photoSchema, 0, 12).default([]),
    levels: list(say.fieldLevels, level, BOUNDS.levels.least, BOUNDS.levels.most),
    gauge: leftOut(gauge, say.fieldGaugeUsual),
    book: bookSchema,
    fit: fitSchema,
    light: lightSchema.optional(),
    insert: insertSchema.optional(),
    sheets: leftOut(sheetSizes, say.fieldSheetsUsual),
    waste: number(say.fieldKitWaste, 0, 1).default(0.1),
    prices: priceList.default({}),
    currency: words(say.fieldCurrency, TEXT.currency).optional(),
    rates: rateSchema.prefault({}),
    drying: dryingSchema.prefault({}),
    supplies: list(say.fieldSupplies, supplySchema, 0, 100).default([]),
  })
  .meta({
    title: "Leaflight kit",
    get description() {
      return say.fieldKit();
    },
  });

export type FrontMatter = z.output<typeof frontMatter>;

/** The JSON Schema (draft 2020-12) of what authors write, in the language that is spoken. */
export function kitJsonSchema(): JsonSchema & Record<string, unknown> {
  return z.toJSONSchema(frontMatter, { io: "input", target: "draft-2020-12" }) as JsonSchema & Record<string, unknown>;
}

/** The JSON Schema as the file that is published and that stands beside the kits. */
export function schemaText(): string {
  return `${JSON.stringify(kitJsonSchema(), null, 2)}\n`;
}
