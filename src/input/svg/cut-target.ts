import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { lineOf } from "./attribute.ts";
import { PictureError, quoted } from "./picture-error.ts";
import type { PictureReport } from "./picture-report.ts";
import type { Scope } from "./scope.ts";

/** A property that points to what an element is cut by. */
export interface CutProperty {
  readonly name: "clip-path" | "mask";
  readonly value: string;
}

const KINDS = { "clip-path": "clipPath", mask: "mask" } as const;

/**
 * The clip path or mask that a property points to; one that is missing cuts nothing, as CSS has it.
 *
 * @throws PictureError for what is no reference into the file, and for what cuts itself
 */
export function cutTarget(
  element: Element,
  { name: property, value }: CutProperty,
  scope: Scope,
  byId: ReadonlyMap<string, Element>,
  report: PictureReport,
): Element | undefined {
  if (value === "none") return undefined;
  const [, id] = /^url\(\s*["']?#([^"')]+)["']?\s*\)/i.exec(value) ?? [];
  const advice = { name: element.localName!, property, value: quoted(value) };
  if (id === undefined) throw new PictureError(lineOf(element), say.pictureUnsupported(advice));
  const target = byId.get(id.trim());
  if (target !== undefined && scope.showing.includes(target)) {
    throw new PictureError(lineOf(element), say.pictureCutCycle(advice));
  }
  if (target?.localName === KINDS[property]) return target;
  report.note(lineOf(element), say.pictureCutMissing(advice));
  return undefined;
}
