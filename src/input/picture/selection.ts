import { z } from "zod";
import * as say from "../../words/messages.ts";
import { described } from "../files/schema-fields.ts";
import { TEXT } from "../files/text-bounds.ts";

/** What picks shapes of a drawing: `#id`, `.class`, any other text for a name, or a colour. */
export type Selector = string | { readonly fill: string } | { readonly stroke: string };

/** One or several of them; a shape is picked by any. */
export type Selection = Selector | readonly Selector[];

const colour = z
  .string()
  .min(1)
  .max(TEXT.name)
  .meta(described(() => say.selectColourField()));

/** One of them, as authors write it. */
export const selectorSchema = z
  .union([
    z.string().min(1).max(TEXT.path),
    z
      .partialRecord(z.enum(["fill", "stroke"]), colour)
      .refine((paint) => Object.keys(paint).length === 1)
      .transform((paint) => paint as Exclude<Selector, string>),
  ])
  .meta(described(() => say.selectField()));

/** A selection as authors write it. */
export const selectionSchema = z
  .union([selectorSchema, z.array(selectorSchema).min(1).max(500)])
  .meta(described(() => say.selectListField()));

/** The selectors of a selection, each with its place in it: none where it stands alone. */
export function selectorsOf(
  selection: Selection,
): { readonly selector: Selector; readonly place: readonly number[] }[] {
  if (!isList(selection)) return [{ selector: selection, place: [] }];
  return selection.map((one, i) => ({ selector: one, place: [i] }));
}

/** A selector as its author wrote it. */
export function selectorText(one: Selector): string {
  if (typeof one === "string") return one;
  return "fill" in one ? `fill: ${one.fill}` : `stroke: ${one.stroke}`;
}

function isList(selection: Selection): selection is readonly Selector[] {
  return Array.isArray(selection);
}
