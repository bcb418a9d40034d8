import * as say from "../../words/messages.ts";
import { MOST_ENTITIES } from "./picture-bounds.ts";
import { PictureLimit } from "./picture-error.ts";

const DECLARATION = /<!ENTITY\s+([\w.:-]+)\s+(?:"([^"<&%]*)"|'([^'<&%]*)')\s*>/g;

/**
 * The text with the entities replaced that its own document type declares as plain words: exporters abbreviate addresses so.
 * Those that hold markup or other entities, or stand in other files, are left as they are.
 *
 * @throws PictureLimit where they add too much
 */
export function expandEntities(text: string): string {
  const [doctype] = /<!DOCTYPE\s[^[>]*\[[^\]]*\]\s*>/.exec(text.slice(0, 100_000)) ?? [];
  if (doctype === undefined) return text;
  const entities = declaredIn(doctype);
  if (entities.size === 0) return text;
  const after = text.indexOf(doctype) + doctype.length;
  let room: number = MOST_ENTITIES.added;
  const rest = text.slice(after).replace(/&([\w.:-]{1,100});/g, (reference, name: string) => {
    const value = entities.get(name);
    if (value === undefined) return reference;
    room -= value.length;
    if (room < 0) throw new PictureLimit(1, say.pictureManyEntities());
    return value;
  });
  return text.slice(0, after) + rest;
}

function declaredIn(doctype: string): Map<string, string> {
  const entities = new Map<string, string>();
  for (const [, name, double, single] of doctype.matchAll(DECLARATION)) {
    const value = (double ?? single ?? "").replace(/\s+/g, " ");
    // The first declaration of a name counts (XML 1.0, "Entity Declarations").
    if (value.length <= MOST_ENTITIES.letters && !entities.has(name!)) entities.set(name!, escaped(value));
    if (entities.size >= MOST_ENTITIES.count) break;
  }
  return entities;
}

function escaped(value: string): string {
  return value.replaceAll('"', "&#34;").replaceAll("'", "&#39;").replaceAll(">", "&#62;");
}
