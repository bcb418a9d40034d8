import { type Document, isMap, isNode, isPair, isScalar, LineCounter } from "yaml";
import * as say from "../../words/messages.ts";
import { KitError } from "./message.ts";
import { checkYaml } from "./yaml-check.ts";
import { atParser, parseYaml } from "./yaml-document.ts";
import { YamlFault } from "./yaml-fault.ts";

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

/**
 * Reads YAML 1.2: one document, without tags of its own, each key once. `above` is the number of the file's lines before it,
 * `whole` what all of it is called. @throws KitError at the first thing that is not so
 */
export function readYaml(file: string, yaml: string, above: number, whole: string): YamlFile {
  const lines = new LineCounter();
  const placeAt = (offset: number): FilePlace => {
    const { line, col } = lines.linePos(offset);
    return { line: line + above, column: col };
  };
  try {
    const document = parseYaml(yaml, lines);
    checkYaml(document);
    const value: unknown = atParser(() => document.toJS({ maxAliasCount: -1 })) ?? {};
    return { value, placeOf: (path, key) => placeAt(offsetOf(document, path, key)) };
  } catch (error) {
    if (!(error instanceof YamlFault)) throw error;
    const advice = { given: error.message, allowed: say.checkWellFormedYaml(), remedy: say.checkCorrectYaml() };
    throw new KitError([{ file, ...placeAt(error.offset), field: whole, ...advice }]);
  }
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
