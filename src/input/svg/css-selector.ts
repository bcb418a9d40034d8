import type { Element } from "@xmldom/xmldom";
import { type CssNode, generate, ident } from "css-tree";
import * as say from "../../words/messages.ts";
import { PictureError, quoted } from "./picture-error.ts";

/** A type, classes and ids that one element must have together: `path.leaf#a`. */
export interface CompoundSelector {
  readonly type: string | undefined;
  readonly classes: readonly string[];
  readonly ids: readonly string[];
  /** Ids, classes and types weighed for comparison (Selectors 4, "Calculating a selector's specificity"). */
  readonly specificity: number;
}

/**
 * The selector of a css-tree `Selector` node.
 *
 * @throws PictureError for combinators, attributes, pseudo-classes and namespaces
 */
export function readSelector(node: CssNode, line: number): CompoundSelector {
  let type: string | undefined;
  const classes: string[] = [];
  const ids: string[] = [];
  for (const part of node.children ?? []) {
    const name = ident.decode(part.name ?? "");
    if (part.type === "TypeSelector" && !part.name?.includes("|")) type = name === "*" ? undefined : name;
    else if (part.type === "ClassSelector") classes.push(name);
    else if (part.type === "IdSelector") ids.push(name);
    else {
      throw new PictureError(line, say.pictureCssSelector({ selector: quoted(generate(node)) }));
    }
  }
  return { type, classes, ids, specificity: ids.length * 1e6 + classes.length * 1e3 + (type === undefined ? 0 : 1) };
}

/** Whether an element of these classes is one that the selector means; names are case-sensitive, as in XML. */
export function matches(selector: CompoundSelector, element: Element, classes: readonly string[]): boolean {
  if (selector.type !== undefined && selector.type !== element.localName) return false;
  return (
    selector.ids.every((id) => id === element.getAttribute("id")) &&
    selector.classes.every((name) => classes.includes(name))
  );
}
