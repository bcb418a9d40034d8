import { z } from "zod";
import * as say from "../../words/messages.ts";
import { described } from "../files/schema-fields.ts";
import { TEXT } from "../files/text-bounds.ts";

/** Shapes of a drawing: those with an id, a class or a name, or of a colour. */
export type Selector = string | { readonly [Paint in "fill" | "stroke"]?: string };

const word = z.string().min(1).max(TEXT.path).meta(described(say.selectWord));

const colour = z.string().min(1).max(60).meta(described(say.selectColour));

const selector = z.union([
  word,
  z.partialRecord(z.enum(["fill", "stroke"]), colour).refine((paint) => Object.keys(paint).length === 1),
]);

/** One or several of them, always as a list. */
export const selection = z
  .union([selector, z.array(selector).min(1).max(500)])
  .transform((given): readonly Selector[] => (Array.isArray(given) ? given : [given]))
  .meta(described(say.selectShapes));
