import {
  type Alias,
  type Document,
  isAlias,
  isMap,
  isNode,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  type Pair,
} from "yaml";
import type { FieldPath } from "../files/problem.ts";
import { checkYaml } from "../files/yaml-check.ts";
import { atParser, parseYaml } from "../files/yaml-document.ts";
import type { YamlValue } from "./yaml-value.ts";

/** A list or a map on the way to a field. */
export type Holder = Extract<Node, { items: unknown[] }>;

/** A step into a list or a map: its entry, and what stands there. */
export interface Step {
  readonly holder: Holder;
  /** Of the entry in the list or the map, from 0. */
  readonly place: number;
  readonly node: Node | undefined;
}

/** How far a path leads in a document. */
export interface Walk {
  readonly steps: readonly Step[];
  /** What the last step leads to; the root where there is none. */
  readonly node: Node | undefined;
  /** Steps that lead nowhere. */
  readonly missing: FieldPath;
}

/** A YAML text, and what it means. */
export interface YamlText {
  readonly text: string;
  readonly document: Document;
  readonly value: YamlValue;
}

/** The texts that were read last: an edit looks at the same one several times, and at the one that it makes. */
const latest: YamlText[] = [];
const KEPT = 3;

/** Reads a YAML text as the reader of front matters does; whoever has it must not change its document. @throws YamlFault */
export function yamlText(text: string): YamlText {
  const known = latest.find((one) => one.text === text) ?? readText(text);
  if (latest[0] !== known)
    latest.splice(0, latest.length, known, ...latest.filter((one) => one !== known).slice(0, KEPT - 1));
  return known;
}

function readText(text: string): YamlText {
  const document = parseYaml(text, new LineCounter());
  checkYaml(document);
  const value: YamlValue = atParser(() => document.toJS({ maxAliasCount: -1 })) ?? {};
  return { text, document, value };
}

/** Goes along a path, as far as it leads; an alias is not gone through. */
export function walkTo(document: Document, at: FieldPath): Walk {
  const steps: Step[] = [];
  let node = nodeOf(document.contents);
  for (const [n, step] of at.entries()) {
    const place = placeIn(node, step);
    if (place < 0) return { steps, node, missing: at.slice(n) };
    const holder = node as Holder;
    const item: unknown = holder.items[place];
    node = nodeOf(isMap(holder) ? (item as Pair).value : item);
    steps.push({ holder, place, node });
  }
  return { steps, node, missing: [] };
}

/** The text of a map's key at a place. */
export function keyAt(holder: Holder, place: number): Node {
  return (holder.items[place] as Pair).key as Node;
}

function placeIn(node: Node | undefined, step: string | number): number {
  if (isMap(node)) return node.items.findIndex(({ key }) => isScalar(key) && String(key.value) === String(step));
  return isSeq(node) && typeof step === "number" && step < node.items.length ? step : -1;
}

function nodeOf(value: unknown): Node | undefined {
  return isNode(value) ? value : undefined;
}

/** Aliases that stand for a node, in the order of the text. */
export function aliasesOf(document: Document, of: Node): Alias[] {
  const anchored = new Map<string, Node>();
  return nodesIn(document.contents).filter((node): node is Alias => {
    if (isAlias(node)) return anchored.get(node.source) === of;
    const { anchor } = node as { anchor?: string };
    if (anchor !== undefined) anchored.set(anchor, node);
    return false;
  });
}

/** Every node below one, itself included, in the order of the text. */
export function nodesIn(node: unknown): Node[] {
  if (!isNode(node)) return [];
  if (isSeq(node)) return [node, ...node.items.flatMap(nodesIn)];
  if (isMap(node)) return [node, ...node.items.flatMap(({ key, value }) => [...nodesIn(key), ...nodesIn(value)])];
  return [node];
}
