import { isMap, isNode, isScalar, type Node, type Pair, type YAMLMap, type YAMLSeq } from "yaml";
import { lineEnd, lineStart } from "./splice.ts";
import type { Holder } from "./yaml-walk.ts";

/** Where the entries of lists and maps stand in their text. Ranges are offsets, the end exclusive. */
export interface Range {
  readonly from: number;
  readonly to: number;
}

/** Where a node stands, without an anchor or a tag before it. */
export function rangeOf(node: Node): Range {
  const [from, to] = node.range!;
  return { from, to };
}

/** Whether a list or a map stands between brackets or braces. */
export function isFlow(holder: Holder): boolean {
  return holder.flow === true;
}

/** Whether a node stands on lines of its own: a list or a map without brackets, or a text below `|` or `>`. */
export function isBlock(node: Node): boolean {
  if ("items" in node) return !isFlow(node as Holder);
  return isScalar(node) && (node.type === "BLOCK_LITERAL" || node.type === "BLOCK_FOLDED");
}

/** What an entry begins with: the key of a map, or the item of a list. */
function headOf(holder: Holder, place: number): Node {
  const item: unknown = holder.items[place];
  return (isMap(holder) ? (item as Pair).key : item) as Node;
}

/** What an entry ends with. */
function lastOf(holder: Holder, place: number): Node {
  const item: unknown = holder.items[place];
  const last = isMap(holder) ? ((item as Pair).value ?? (item as Pair).key) : item;
  return (isNode(last) ? last : headOf(holder, place)) as Node;
}

/** Behind the colon of a map's entry; behind the key where it has none. */
export function afterColon(text: string, holder: YAMLMap, place: number): number {
  const { to } = rangeOf(headOf(holder, place));
  const colon = /\s*:/y;
  colon.lastIndex = to;
  return colon.test(text) ? colon.lastIndex : to;
}

/** Where an entry's content ends: behind its value, or behind its colon. */
export function entryEnd(text: string, holder: Holder, place: number): number {
  const { to } = rangeOf(lastOf(holder, place));
  return isMap(holder) ? Math.max(to, afterColon(text, holder, place)) : to;
}

/** The lines of an entry of a list or map without brackets: with its dash, its margin, and what stands behind it. */
export function blockEntry(text: string, holder: Holder, place: number): Range {
  const from = isMap(holder) ? rangeOf(headOf(holder, place)).from : dashAt(text, holder as YAMLSeq, place);
  return { from, to: lineEnd(text, entryEnd(text, holder, place)) };
}

/** Where the dash of a list's item stands. */
function dashAt(text: string, list: YAMLSeq, place: number): number {
  const { from } = rangeOf(list);
  if (place === 0) return from;
  const begin = rangeOf(lastOf(list, place - 1)).to;
  const between = text.slice(begin, rangeOf(headOf(list, place)).from);
  const dashes = [...between.matchAll(/(?:^|\n)[ \t]*-(?=\s|$)/g)];
  const last = dashes.at(-1);
  return last ? begin + last.index + last[0].length - 1 : from;
}

/** How far a place is from the beginning of its line. */
export function columnOf(text: string, at: number): number {
  return at - lineStart(text, at);
}

/** An entry between brackets or braces: its content, and where the comma behind it ends; undefined where there is none. */
export interface FlowEntry extends Range {
  readonly comma: number | undefined;
  /** Whether its lines hold nothing else than it. */
  readonly isAlone: boolean;
}

export function flowEntry(text: string, holder: Holder, place: number): FlowEntry {
  const before = place === 0 ? rangeOf(holder).from + 1 : commaAfter(text, entryEnd(text, holder, place - 1))!;
  const from = skipped(text, before);
  const to = entryEnd(text, holder, place);
  const comma = commaAfter(text, to);
  const isAlone =
    text.slice(lineStart(text, from), from).trim() === "" && /^[ \t]*(#.*)?\r?\n/.test(text.slice(comma ?? to));
  return { from, to, comma, isAlone };
}

/** Behind white space and comments. */
function skipped(text: string, at: number): number {
  const blank = /(?:\s|#[^\n]*)*/y;
  blank.lastIndex = at;
  return blank.test(text) ? blank.lastIndex : at;
}

function commaAfter(text: string, at: number): number | undefined {
  const next = skipped(text, at);
  return text[next] === "," ? next + 1 : undefined;
}
