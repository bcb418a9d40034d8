import type { Element } from "@xmldom/xmldom";
import { type CssNode, generate, ident } from "css-tree/dist/csstree.esm";
import * as say from "../../words/messages.ts";
import { type AttributeTest, attributeHolds, readAttributeTest } from "./css-attribute.ts";
import { PictureError, quoted } from "./picture-error.ts";

/** What one element must be together: `path.leaf#a[fill]`. */
export interface CompoundSelector {
  readonly type: string | undefined;
  readonly classes: readonly string[];
  readonly ids: readonly string[];
  readonly attributes: readonly AttributeTest[];
  /** Whether it must be the outermost element. */
  readonly root: boolean;
}

/** An element, and what must be around it. */
export interface Selector {
  readonly subject: CompoundSelector;
  /** From the nearest outward; `>`: the parent itself, else any element around. */
  readonly around: readonly { readonly parent: boolean; readonly compound: CompoundSelector }[];
  /** Ids, then classes and attributes, then types weighed for comparison (Selectors 4, "Calculating a selector's specificity"). */
  readonly specificity: number;
}

/** States that a picture at rest is never in, and parts that are no elements. */
const NEVER = ["hover", "active", "focus", "focus-visible", "focus-within", "visited", "link", "any-link", "target"];

interface Parts {
  type: string | undefined;
  classes: string[];
  ids: string[];
  attributes: AttributeTest[];
  root: boolean;
}

/**
 * The selector of a css-tree `Selector` node; undefined for one that means nothing in a picture at rest.
 *
 * @throws PictureError for siblings, places among them and namespaces
 */
export function readSelector(node: CssNode, line: number): Selector | undefined {
  const refused = (): PictureError =>
    new PictureError(line, say.pictureCssSelector({ selector: quoted(generate(node)) }));
  const compounds: Parts[] = [emptyParts()];
  const parents: boolean[] = [];
  let means = true;
  for (const part of node.children ?? []) {
    if (part.type !== "Combinator") means = addPart(compounds.at(-1)!, part, refused) && means;
    else if (part.name === " " || part.name === ">") {
      parents.push(part.name === ">");
      compounds.push(emptyParts());
    } else throw refused();
  }
  if (!means) return undefined;
  const [subject, ...around] = compounds.toReversed();
  return {
    subject: subject!,
    around: around.map((compound, i) => ({ parent: parents.at(-1 - i)!, compound })),
    specificity: compounds.reduce((sum, compound) => sum + weightOf(compound), 0),
  };
}

/**
 * Whether an element of these classes is one that the selector means; names are case-sensitive, as in XML.
 *
 * @param step told of each element around that is looked at
 */
export function matches(selector: Selector, element: Element, classes: readonly string[], step: () => void): boolean {
  return isMeant(selector.subject, element, classes) && isAround(selector.around, 0, element, step);
}

function emptyParts(): Parts {
  return { type: undefined, classes: [], ids: [], attributes: [], root: false };
}

/** Adds a part; false where nothing can be meant by it. */
function addPart(parts: Parts, part: CssNode, refused: () => PictureError): boolean {
  const name = ident.decode(typeof part.name === "string" ? part.name : "");
  if (part.type === "TypeSelector" && !name.includes("|")) parts.type = name === "*" ? undefined : name;
  else if (part.type === "ClassSelector") parts.classes.push(name);
  else if (part.type === "IdSelector") parts.ids.push(name);
  else if (part.type === "PseudoElementSelector") return false;
  else if (part.type === "PseudoClassSelector" && NEVER.includes(name)) return false;
  else if (part.type === "PseudoClassSelector" && name === "root") parts.root = true;
  else {
    const test = part.type === "AttributeSelector" ? readAttributeTest(part) : undefined;
    if (test === undefined) throw refused();
    parts.attributes.push(test);
  }
  return true;
}

function weightOf({ ids, classes, attributes, root, type }: CompoundSelector): number {
  const named = classes.length + attributes.length + (root ? 1 : 0);
  return ids.length * 1e6 + named * 1e3 + (type === undefined ? 0 : 1);
}

function isAround(around: Selector["around"], at: number, element: Element, step: () => void): boolean {
  const next = around[at];
  if (next === undefined) return true;
  for (let outer = parentOf(element); outer !== undefined; outer = parentOf(outer)) {
    step();
    if (isMeant(next.compound, outer, classesOf(outer)) && isAround(around, at + 1, outer, step)) return true;
    if (next.parent) return false;
  }
  return false;
}

function isMeant(selector: CompoundSelector, element: Element, classes: readonly string[]): boolean {
  return (
    (selector.type === undefined || selector.type === element.localName) &&
    selector.ids.every((id) => id === element.getAttribute("id")) &&
    selector.classes.every((name) => classes.includes(name)) &&
    selector.attributes.every((test) => attributeHolds(test, element)) &&
    (!selector.root || parentOf(element) === undefined)
  );
}

function classesOf(element: Element): string[] {
  return (element.getAttribute("class") ?? "").split(/\s+/);
}

function parentOf({ parentNode }: Element): Element | undefined {
  return parentNode?.nodeType === 1 ? (parentNode as Element) : undefined;
}
