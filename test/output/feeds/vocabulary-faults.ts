import { readVocabulary } from "./vocabulary.ts";

// biome-ignore lint/suspicious/noExplicitAny: a document of any shape, looked into freely
type Json = any;

const vocabulary = readVocabulary();
const DATA_TYPES = ["Text", "URL", "Number", "Date", "DateTime", "Duration", "Boolean", "Integer"];

/** Whatever in a document schema.org does not know, or does not know there. */
export function vocabularyFaults(node: Json, path = String(node["@type"])): string[] {
  const { "@type": type, "@context": _context, "@id": _id, ...properties } = node;
  if (!vocabulary.isType(type)) return [`${path}: no type ${type}`];
  return Object.entries(properties).flatMap(([property, value]) => {
    const where = `${path}.${property}`;
    if (!vocabulary.hasProperty(type, property)) return [`${where}: not of ${type}`];
    if (vocabulary.supersededBy(property)) return [`${where}: superseded`];
    return [value].flat().flatMap((one: Json) => [...valueFaults(property, one, where)]);
  });
}

function valueFaults(property: string, value: Json, where: string): string[] {
  const range = vocabulary.rangeOf(property);
  if (typeof value !== "object") {
    const wanted = typeof value === "number" ? ["Number", "Integer"] : DATA_TYPES;
    return range.some((type) => wanted.includes(type)) ? [] : [`${where}: ${value} is no ${range}`];
  }
  const fits = range.some((type) => vocabulary.isA(value["@type"], type));
  return [...(fits ? [] : [`${where}: ${value["@type"]} is no ${range}`]), ...vocabularyFaults(value, where)];
}
