import type { Element } from "@xmldom/xmldom";
import { childElements, SVG_NAMESPACE } from "./svg-document.ts";
import type { Calling } from "./svg-picture.ts";

/** Attributes in which editors keep the names that people see, in namespaces of their own. */
const EDITORS_NAMES = ["label", "name", "id"];

/** Namespaces whose attributes of these names are no names. */
const OTHER_NAMESPACES = ["http://www.w3.org/1999/xlink", "http://www.w3.org/XML/1998/namespace", SVG_NAMESPACE];

/** Letters of a name that are read. */
const MOST_LETTERS = 200;

const known = new WeakMap<Element, Calling>();

/** What an element may be named by. */
export function callingOf(element: Element): Calling {
  const found = known.get(element);
  if (found) return found;
  const calling = readCalling(element);
  known.set(element, calling);
  return calling;
}

function readCalling(element: Element): Calling {
  const id = element.getAttribute("id") || undefined;
  const classes = (element.getAttribute("class") ?? "").split(/\s+/).filter(Boolean);
  const names = [
    ...editorsNames(element),
    element.getAttribute("data-name"),
    titleOf(element),
    ...(id === undefined ? [] : namesInId(id)),
  ];
  const folded = names.map((name) => foldName(name ?? "")).filter(Boolean);
  return { id, names: [...new Set(folded)], classes };
}

/** A name as names are compared: white space folded, letters composed (Unicode NFC). */
export function foldName(name: string): string {
  return name.slice(0, MOST_LETTERS).replace(/\s+/g, " ").trim().normalize("NFC");
}

/**
 * The names that exporters put into an id: `_x20_` stands for a space, as for every sign that an id cannot hold, and
 * `_1_` at the end tells apart what had one name.
 */
function namesInId(id: string): string[] {
  const decoded = id.slice(0, MOST_LETTERS).replace(/_x([0-9a-f]{1,6})_/gi, (whole, digits: string) => {
    const point = Number.parseInt(digits, 16);
    return point > 0x10ffff || (point >= 0xd800 && point <= 0xdfff) ? whole : String.fromCodePoint(point);
  });
  const plain = decoded.replace(/_\d{1,5}_$/, "");
  return plain === "" ? [decoded] : [plain, decoded];
}

function editorsNames(element: Element): string[] {
  const found = Array.from(element.attributes).filter(
    ({ namespaceURI, localName }) =>
      namespaceURI && !OTHER_NAMESPACES.includes(namespaceURI) && EDITORS_NAMES.includes(localName ?? ""),
  );
  return found
    .toSorted((a, b) => EDITORS_NAMES.indexOf(a.localName!) - EDITORS_NAMES.indexOf(b.localName!))
    .map(({ value }) => value);
}

function titleOf(element: Element): string | null {
  // The title of the outermost element is that of the whole drawing.
  if (element.firstChild === null || element.parentNode?.nodeType !== element.ELEMENT_NODE) return null;
  const title = childElements(element).find(
    ({ localName, namespaceURI }) => localName === "title" && namespaceURI === SVG_NAMESPACE,
  );
  return title?.textContent ?? null;
}
