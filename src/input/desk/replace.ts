import { isMap, isScalar, type Node } from "yaml";
import { afterColon, blockEntry, columnOf, isBlock, isFlow, rangeOf } from "./entries.ts";
import { lineEndOf, type Splice } from "./splice.ts";
import { blockLines, lineText } from "./value-text.ts";
import type { YamlValue } from "./yaml-value.ts";
import { keyAt, type Step, type Walk } from "./yaml-walk.ts";

/** Puts a value in the place of another one, written as that one where both are scalars. */
export function replaced(text: string, { steps, node }: Walk, put: YamlValue): Splice {
  const step = steps.at(-1)!;
  const inFlow = steps.some(({ holder }) => isFlow(holder));
  if (isAbsent(node)) return intoNothing(text, step, lineText(put, { isFlow: inFlow }));
  if (isBlock(node)) return forBlock(text, step, node, put);
  const { from, to } = rangeOf(node);
  const was = isScalar(node) ? text.slice(from, to) : undefined;
  const line = lineText(put, { isFlow: inFlow, was });
  const lines = inFlow || !isMap(step.holder) ? [] : linesOf(text, step, put);
  if (lines.length > 1) return { from: rangeOf(keyAt(step.holder, step.place)).from, to, put: joined(text, lines) };
  const begin = beginOf(text, step);
  const { tag } = node as { tag?: string };
  if (tag === undefined) return { from, to, put: line };
  return { from: begin, to, put: text.slice(begin, from).replace(/![^\s,[\]{}]*[ \t]*/, "") + line };
}

function isAbsent(node: Node | undefined): node is undefined {
  return node === undefined || (isScalar(node) && node.range![0] === node.range![1]);
}

/** After a colon or a dash that nothing stands behind. */
function intoNothing(text: string, step: Step, line: string): Splice {
  const at = beginOf(text, step);
  return { from: at, to: at, put: ` ${line}` };
}

/** Behind the colon or the dash of an entry; inside brackets, where the item begins. */
function beginOf(text: string, { holder, place, node }: Step): number {
  if (isMap(holder)) return afterColon(text, holder, place);
  if (isFlow(holder)) return node ? rangeOf(node).from : 0;
  return blockEntry(text, holder, place).from + 1;
}

/** What stands on lines of its own gives way to a line, or to other lines; what is noted behind its key stays. */
function forBlock(text: string, step: Step, node: Node, put: YamlValue): Splice {
  const { from, to } = rangeOf(node);
  const eol = text[to - 1] === "\n" ? lineEndOf(text) : "";
  if (!isMap(step.holder)) return { from, to, put: lineText(put, { isFlow: false }) + eol };
  const lines = linesOf(text, step, put);
  const key = rangeOf(keyAt(step.holder, step.place)).from;
  const note = /^[ \t]*(#[^\r\n]*)/.exec(text.slice(afterColon(text, step.holder, step.place)))?.[1];
  const noted = note === undefined ? lines : lines.map((line, i) => (i === 0 ? `${line} ${note}` : line));
  return { from: key, to, put: joined(text, noted) + eol };
}

function linesOf(text: string, { holder, place }: Step, put: YamlValue): string[] {
  const { from, to } = rangeOf(keyAt(holder, place));
  return blockLines(`${text.slice(from, to)}:`, put, columnOf(text, from));
}

function joined(text: string, lines: readonly string[]): string {
  return lines.join(lineEndOf(text)).trimStart();
}
