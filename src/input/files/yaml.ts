import { type Alias, type Document, isMap, isNode, isPair, isScalar, LineCounter, parseDocument, visit } from "yaml";
import * as say from "../../words/messages.ts";
import { KitError } from "./message.ts";

/** Where something stands in a file, both from 1. */
export interface FilePlace {
  readonly line: number;
  readonly column: number;
}

/** YAML with places in its file. */
export interface YamlFile {
  readonly value: unknown;
  /** Place of a field, or of the nearest field around it that exists; of the key itself with `key`. */
  readonly placeOf: (path: readonly PropertyKey[], key?: string) => FilePlace;
}

/** `above` is the number of the file's lines before the YAML, `whole` what all of it is called. @throws KitError when it is not YAML. */
export function readYaml(file: string, yaml: string, above: number, whole: string): YamlFile {
  const lines = new LineCounter();
  const document = parseDocument(yaml, { lineCounter: lines });
  const placeAt = (offset: number): FilePlace => {
    const { line, col } = lines.linePos(offset);
    return { line: line + above, column: col };
  };
  const broken = (offset: number, given: string): KitError => {
    const advice = { given, allowed: say.checkWellFormedYaml(), remedy: say.checkCorrectYaml() };
    return new KitError([{ file, ...placeAt(offset), field: whole, ...advice }]);
  };
  const [error] = document.errors;
  if (error) throw broken(error.pos[0], yamlFault(error.message.split("\n")[0]!.replace(/ at line \d+.*$/, "")));
  const alias = unresolvedAlias(document);
  if (alias) throw broken(alias.range![0], say.checkYamlAlias({ alias: `*${alias.source}` }));
  return {
    value: document.toJS() ?? {},
    placeOf: (path, key) => placeAt(offsetOf(document, path, key)),
  };
}

function offsetOf(document: Document, path: readonly PropertyKey[], key: string | undefined): number {
  let node: unknown = document.contents;
  let offset = 0;
  for (const step of key === undefined ? path : [...path, key]) {
    const pair = isMap(node)
      ? node.items.find((item) => isPair(item) && isScalar(item.key) && String(item.key.value) === String(step))
      : undefined;
    if (pair && isNode(pair.key) && pair.key.range) offset = pair.key.range[0];
    const next: unknown = pair
      ? pair.value
      : isNode(node) && "get" in node
        ? (node as { get(key: unknown, keep: boolean): unknown }).get(step, true)
        : undefined;
    if (!isNode(next)) break;
    if (!pair && next.range) offset = next.range[0];
    node = next;
  }
  return offset;
}

/** The parser's own words, with what they usually mean in a kit. */
function yamlFault(fault: string): string {
  if (/compact mapping|Nested mapping/i.test(fault)) return say.checkYamlNested({ fault });
  if (/Comments must be separated/i.test(fault)) return say.checkYamlHash({ fault });
  return fault;
}

function unresolvedAlias(document: Document): Alias | undefined {
  let found: Alias | undefined;
  visit(document, {
    Alias: (_, alias) => {
      if (alias.resolve(document)) return undefined;
      found = alias;
      return visit.BREAK;
    },
  });
  return found;
}
