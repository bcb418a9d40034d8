import { isMap, type YAMLMap, type YAMLSeq } from "yaml";
import { blockEntry, columnOf, entryEnd, flowEntry, isBlock, isFlow, rangeOf } from "./entries.ts";
import { lineEnd, lineEndOf, lineStart, type Splice } from "./splice.ts";
import { blockLines, keyText, lineText } from "./value-text.ts";
import type { YamlValue } from "./yaml-value.ts";
import type { Holder } from "./yaml-walk.ts";

/** Something new for a list or a map. */
export interface NewEntry {
  /** Of a map; undefined in a list. */
  readonly key: string | undefined;
  readonly value: YamlValue;
  /** Before which entry it comes; the number of entries for the end. */
  readonly place: number;
}

/** Puts an entry into a list or a map, written as the others there are. */
export function putIn(text: string, holder: Holder, entry: NewEntry): Splice {
  if (!isFlow(holder)) return intoBlock(text, holder, entry);
  const line = lineOf(entry);
  if (holder.items.length === 0) return intoEmpty(text, holder, line);
  return entry.place < holder.items.length
    ? beforeFlow(text, holder, entry.place, line)
    : afterFlow(text, holder, line);
}

function lineOf({ key, value }: NewEntry): string {
  const text = lineText(value, { isFlow: true });
  return key === undefined ? text : `${keyText(key)}: ${text}`;
}

function intoBlock(text: string, holder: Holder, { key, value, place }: NewEntry): Splice {
  const eol = lineEndOf(text);
  const first = blockEntry(text, holder, 0);
  const margin = columnOf(text, first.from);
  const before = key === undefined ? "-" : `${keyText(key)}:`;
  const lines = isMapItem(holder, value) ? itemLines(value, margin) : blockLines(before, value, margin);
  const at = place === 0 ? lineStart(text, first.from) : blockEntry(text, holder, place - 1).to;
  const isOpen = at > 0 && text[at - 1] !== "\n";
  const put = isOpen ? lines.map((line) => eol + line) : lines.map((line) => line + eol);
  return { from: at, to: at, put: put.join("") };
}

/** Whether a list writes its maps without braces, and this is one. */
function isMapItem(holder: Holder, value: YamlValue): value is Readonly<Record<string, YamlValue>> {
  if (isMap(holder) || typeof value !== "object" || value === null || Array.isArray(value)) return false;
  const last = (holder as YAMLSeq).items.at(-1);
  return isMap(last) && isBlock(last) && Object.keys(value).length > 0;
}

function itemLines(value: Readonly<Record<string, YamlValue>>, margin: number): string[] {
  const [first, ...rest] = Object.entries(value).flatMap(([key, one]) =>
    blockLines(`${keyText(key)}:`, one, margin + 2),
  );
  return [`${" ".repeat(margin)}- ${first!.trimStart()}`, ...rest];
}

function intoEmpty(text: string, holder: Holder, line: string): Splice {
  const { from, to } = rangeOf(holder);
  if (text.slice(from, to).includes("#")) return { from: from + 1, to: from + 1, put: ` ${line},` };
  return { from, to, put: isMap(holder) ? `{ ${line} }` : `[${line}]` };
}

function beforeFlow(text: string, holder: Holder, place: number, line: string): Splice {
  const { from, isAlone } = flowEntry(text, holder, place);
  const gap = isAlone ? lineEndOf(text) + " ".repeat(columnOf(text, from)) : " ";
  return { from, to: from, put: `${line},${gap}` };
}

function afterFlow(text: string, holder: YAMLMap | YAMLSeq, line: string): Splice {
  const last = holder.items.length - 1;
  const end = entryEnd(text, holder, last);
  const { from, comma, isAlone } = flowEntry(text, holder, last);
  if (!isAlone) return { from: end, to: end, put: `, ${line}` };
  const margin = " ".repeat(columnOf(text, from));
  const to = lineEnd(text, comma ?? end);
  const behind = comma === undefined ? `,${text.slice(end, to)}` : text.slice(end, to);
  return { from: end, to, put: `${behind}${margin}${line}${comma === undefined ? "" : ","}${lineEndOf(text)}` };
}
