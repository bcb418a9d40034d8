import { type Document, isAlias, isNode, isScalar, type Node } from "yaml";
import type { FieldPath } from "../files/problem.ts";
import { rangeOf } from "./entries.ts";
import { spliced } from "./splice.ts";
import { lineText } from "./value-text.ts";
import type { YamlValue } from "./yaml-value.ts";
import { aliasesOf, nodesIn, walkTo, type YamlText, yamlText } from "./yaml-walk.ts";

/**
 * A YAML text in which the field at a path is nobody else's: what it would share through an alias stands there in its own
 * right, and other aliases keep what they mean. With `isWhole`, what stands below the field is nobody else's either.
 */
export function loosened(text: string, at: FieldPath, isWhole = false): string {
  let loose = text;
  for (;;) {
    const read = yamlText(loose);
    const next = unfolded(read, at) ?? handedOn(read, at, isWhole);
    if (next === undefined) return loose;
    loose = next;
  }
}

/** The text with the alias that a path would go through in full. */
function unfolded({ text, document }: YamlText, at: FieldPath): string | undefined {
  const { node, missing } = walkTo(document, at);
  if (missing.length === 0 || !isAlias(node)) return undefined;
  const target = node.resolve(document);
  return target && spliced(text, { ...rangeOf(node), put: textOf(document, text, target) });
}

/** The text with an anchor on the way to a field handed on to the first alias that stands for it. */
function handedOn({ text, document }: YamlText, at: FieldPath, isWhole: boolean): string | undefined {
  const { steps, node } = walkTo(document, at);
  const way = [...(isNode(document.contents) ? [document.contents] : []), ...steps.flatMap((step) => step.node ?? [])];
  const all = isWhole && node ? [...way, ...nodesIn(node)] : way;
  for (const one of all) {
    const { anchor } = one as { anchor?: string };
    const [first] =
      anchor === undefined ? [] : aliasesOf(document, one).filter((alias) => !isWithin(alias, node, isWhole));
    if (!first) continue;
    const handed = spliced(text, { ...rangeOf(first), put: `&${anchor} ${textOf(document, text, one)}` });
    return withoutAnchor(handed, one, anchor!);
  }
  return undefined;
}

function isWithin(alias: Node, node: Node | undefined, isWhole: boolean): boolean {
  return isWhole && node !== undefined && nodesIn(node).includes(alias);
}

/** What a node means, on one line; a scalar as it is written. */
function textOf(document: Document, text: string, node: Node): string {
  const value = node.toJS(document, { maxAliasCount: -1 }) as YamlValue;
  const was = isScalar(node) ? text.slice(...(node.range!.slice(0, 2) as [number, number])) : undefined;
  return lineText(value, { isFlow: true, was });
}

function withoutAnchor(text: string, node: Node, anchor: string): string {
  const { from } = rangeOf(node);
  const at = text.lastIndexOf(`&${anchor}`, from);
  const gap = /^[ \t]*/.exec(text.slice(at + anchor.length + 1))![0].length;
  const isLast = /^(\r?\n|$)/.test(text.slice(at + anchor.length + 1 + gap));
  const before = isLast ? /[ \t]*$/.exec(text.slice(0, at))![0].length : 0;
  return spliced(text, { from: at - before, to: at + anchor.length + 1 + gap, put: "" });
}
