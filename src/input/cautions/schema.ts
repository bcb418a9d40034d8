import { z } from "zod";
import { OCCASIONS } from "../../core/plan/caution.ts";
import * as say from "../../words/messages.ts";
import { choice, described, words } from "../files/schema-fields.ts";
import type { JsonSchema } from "../files/schema-messages.ts";
import { TEXT } from "../files/text-bounds.ts";

/** A file of cautions, as those write it who answer for them. */
export const cautionList = z
  .array(
    z
      .strictObject({
        id: z
          .string()
          .regex(/^[a-z][a-z0-9-]*$/)
          .meta(described(say.fieldCautionId)),
        title: words(say.fieldCautionTitle, TEXT.title),
        when: choice(say.fieldCautionWhen, OCCASIONS),
        short: words(say.fieldCautionShort, TEXT.note),
        text: words(say.fieldCautionText, TEXT.passage),
      })
      .meta(described(say.fieldCaution)),
  )
  .min(1)
  .meta(described(say.fieldCautions));

export function cautionsJsonSchema(): JsonSchema {
  return z.toJSONSchema(cautionList, { io: "input", target: "draft-2020-12" }) as JsonSchema;
}
