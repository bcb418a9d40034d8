import { z } from "zod";
import * as say from "../../words/messages.ts";
import { choice, leftOut, words } from "../files/schema-fields.ts";
import type { JsonSchema } from "../files/schema-messages.ts";
import { TEXT } from "../files/text-bounds.ts";

/** The front matter of the catalogue. */
export const catalogueMatter = z.strictObject({
  title: leftOut(words(say.fieldCatalogueTitle, TEXT.title, "page"), say.fieldCatalogueTitleUsual),
  heading: leftOut(words(say.fieldCatalogueHeading, TEXT.title, "page"), say.fieldCatalogueHeadingUsual),
  summary: leftOut(words(say.fieldCatalogueSummary, TEXT.summary, "page"), say.fieldCatalogueSummaryUsual),
  layout: choice(say.fieldCatalogueLayout, ["catalogue.njk"]).optional(),
});

export function catalogueJsonSchema(): JsonSchema {
  return z.toJSONSchema(catalogueMatter, { io: "input", target: "draft-2020-12" }) as JsonSchema;
}
