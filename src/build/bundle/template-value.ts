import type { TemplateNode } from "./template-node.ts";

/** Script names of a template's own names (`name()` for a macro); every other name is looked up in the context `c`. */
export type Names = Map<string, string>;

/** Names with some more, which hide those of the same name. */
export function bind(names: Names, more: Iterable<readonly [string, string]>): Names {
  return new Map([...names, ...more]);
}

const PAIRS: Readonly<Record<string, string>> = { And: "&&", Or: "||", Add: "+", Sub: "-" };
const COMPARED: Readonly<Record<string, string>> = {
  "==": "==",
  "!=": "!=",
  "<": "<",
  ">": ">",
  "<=": "<=",
  ">=": ">=",
};

/** A template's expression as a script's. What is looked up in nothing is undefined, as in Nunjucks. @throws Error */
export function codeOf(node: TemplateNode, names: Names): string {
  const of = (child: TemplateNode): string => codeOf(child, names);
  const pair = PAIRS[node.typename];
  if (pair) return `(${of(node.left!)} ${pair} ${of(node.right!)})`;
  switch (node.typename) {
    case "Symbol":
      return names.get(node.value as string) ?? `c.${node.value}`;
    case "Literal":
      return JSON.stringify(node.value);
    case "Group":
      return of(node.children![0]!);
    case "Not":
      return `!${of(node.target!)}`;
    case "LookupVal":
      return lookup(node, of);
    case "InlineIf":
      return `(${of(node.cond!)} ? ${of(node.body!)} : ${node.else_ ? of(node.else_) : '""'})`;
    case "Compare":
      return `(${of(node.expr!)} ${node.ops!.map((op) => `${comparison(op.type)} ${of(op.expr)}`).join(" ")})`;
    case "FunCall":
      return call(node, names);
    case "Filter":
      return filtered(node, of);
    default:
      throw new Error(`templates of the page cannot hold ${node.typename}`);
  }
}

function lookup(node: TemplateNode, of: (child: TemplateNode) => string): string {
  const { typename, value } = node.val!;
  return typename === "Literal" && typeof value === "string"
    ? `${of(node.target!)}?.${value}`
    : `${of(node.target!)}?.[${of(node.val!)}]`;
}

function comparison(type: string): string {
  const sign = COMPARED[type];
  if (!sign) throw new Error(`templates of the page cannot compare by ${type}`);
  return sign;
}

function call(node: TemplateNode, names: Names): string {
  const macro = names.get(`${node.name!.value}()`);
  if (!macro) throw new Error(`templates of the page cannot call "${node.name!.value}"`);
  return `${macro}(${node.args!.children!.map((arg) => codeOf(arg, names)).join(", ")})`;
}

function filtered(node: TemplateNode, of: (child: TemplateNode) => string): string {
  const [value, ...rest] = node.args!.children!;
  if (node.name!.value !== "join") throw new Error(`templates of the page cannot filter by "${node.name!.value}"`);
  return `${of(value!)}.join(${rest.map(of).join(", ")})`;
}
