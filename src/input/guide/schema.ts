import { z } from "zod";
import { GUIDE_KINDS } from "../../core/guide/guide-page.ts";
import * as say from "../../words/messages.ts";
import { choice, count, words } from "../files/schema-fields.ts";
import type { JsonSchema } from "../files/schema-messages.ts";
import { TEXT } from "../files/text-bounds.ts";

/** The front matter of a page of the guide. */
export const guideMatter = z.strictObject({
  title: words(say.fieldGuideTitle, TEXT.title, "page"),
  summary: words(say.fieldGuideSummary, TEXT.summary, "page"),
  order: count(say.fieldGuideOrder, { kind: "count", least: 1, most: 99 }),
  kind: choice(say.fieldGuideKind, GUIDE_KINDS).default("chapter"),
});

export function guideJsonSchema(): JsonSchema {
  return z.toJSONSchema(guideMatter, { io: "input", target: "draft-2020-12" }) as JsonSchema;
}
