import { DOMParser, type Document, type Element, type Node, ParseError } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { lineOf } from "./attribute.ts";
import { mediaApplies } from "./media.ts";
import { PictureLimit, quoted } from "./picture-error.ts";
import type { PictureReport } from "./picture-report.ts";
import { parseStyleSheet, type StyleRule } from "./style-sheet.ts";
import { expandEntities } from "./xml-entities.ts";
import { surveyXml } from "./xml-survey.ts";

export const SVG_NAMESPACE = "http://www.w3.org/2000/svg";

const TEXT_NODE = 3;
const CDATA_NODE = 4;
const INSTRUCTION_NODE = 7;

/** An SVG file as parsed, nothing of it interpreted but ids and style sheets. */
export interface SvgDocument {
  readonly root: Element;
  /** Every element with an id, in the order of the file; of several with one id the first. */
  readonly byId: ReadonlyMap<string, Element>;
  readonly sheet: readonly StyleRule[];
}

/**
 * Parses an SVG file. Nothing outside the text is read: external style sheets and entities are faults.
 *
 * @throws PictureLimit for malformed XML and a root other than SVG's
 */
export function parseSvgDocument(file: string, report: PictureReport): SvgDocument {
  const text = file.replace(/^\uFEFF/, "");
  refuseEncoding(text);
  surveyXml(text);
  const document = parseXml(expandEntities(text));
  const root = document.documentElement!;
  if (root.localName !== "svg") throw new PictureLimit(lineOf(root), say.pictureOtherRoot({ name: root.nodeName }));
  if (root.namespaceURI !== SVG_NAMESPACE) {
    throw new PictureLimit(lineOf(root), say.pictureNoNamespace({ namespace: SVG_NAMESPACE }));
  }
  tellExternalSheets(document, report);
  const byId = new Map<string, Element>();
  const sheet: StyleRule[] = [];
  for (const element of elementsOf(root)) {
    collectId(element, byId, report);
    if (element.localName === "style" && element.namespaceURI === SVG_NAMESPACE)
      sheet.push(...readSheet(element, report));
  }
  return { root, byId, sheet };
}

/** The child elements, in order. */
export function childElements(element: Element): Element[] {
  const children: Element[] = [];
  for (let node = element.firstChild; node !== null; node = node.nextSibling) {
    if (node.nodeType === node.ELEMENT_NODE) children.push(node as Element);
  }
  return children;
}

function parseXml(text: string): Document {
  let fault: PictureLimit | undefined;
  const onError = (_level: string, message: string, context: { locator?: { lineNumber?: number } }): void => {
    fault ??= xmlFault(message, context.locator?.lineNumber);
    // Half a drawing is of no use, and the reader would go on through thousands of faults.
    throw fault;
  };
  try {
    return new DOMParser({ onError }).parseFromString(text, "application/xml");
  } catch (error) {
    if (fault) throw fault;
    if (!(error instanceof ParseError)) throw error;
    throw xmlFault(error.message, error.locator?.lineNumber);
  }
}

/** An encoding that a file declares beside its true one, where that could change what it says. */
function refuseEncoding(text: string): void {
  const [, declared] = /^\s*<\?xml\s[^>]*?encoding\s*=\s*["']([^"'>]{0,60})/.exec(text.slice(0, 400)) ?? [];
  if (declared === undefined || /^(utf-?8|us-ascii|ascii)$/i.test(declared)) return;
  const plain = /^(iso-?8859-\d+|windows-125\d|latin1)$/i.test(declared) && !/[^\n-~\t\r]/.test(text);
  if (!plain) throw new PictureLimit(1, say.pictureEncoding({ encoding: quoted(declared) }));
}

function xmlFault(message: string, line: number | undefined): PictureLimit {
  const at = Math.max(1, line ?? 1);
  const [entity] = /&.*;/.exec(message) ?? [];
  if (entity !== undefined) return new PictureLimit(at, say.pictureEntity({ entity: quoted(entity) }));
  if (message === "missing root element") return new PictureLimit(at, say.pictureNoSvg());
  const plain = message.replace(/^Error constructing the DOM: |\b\w*Error: /g, "");
  return new PictureLimit(at, say.pictureNotWellFormed({ fault: `${plain.charAt(0).toLowerCase()}${plain.slice(1)}` }));
}

function tellExternalSheets(document: Document, report: PictureReport): void {
  for (let node: Node | null = document.firstChild; node !== null; node = node.nextSibling) {
    if (node.nodeType === INSTRUCTION_NODE && node.nodeName === "xml-stylesheet") {
      report.fault(lineOf(node), say.pictureExternalSheet());
    }
  }
}

/** All elements under a root and itself, in document order; without recursion, so that depth is no danger. */
function elementsOf(root: Element): Element[] {
  const found: Element[] = [];
  const waiting = [root];
  for (let element = waiting.pop(); element !== undefined; element = waiting.pop()) {
    found.push(element);
    for (const child of childElements(element).reverse()) waiting.push(child);
  }
  return found;
}

function collectId(element: Element, byId: Map<string, Element>, report: PictureReport): void {
  const attribute = element.getAttributeNode("id");
  if (attribute === null || attribute.value === "") return;
  const other = byId.get(attribute.value);
  if (other === undefined) byId.set(attribute.value, element);
  else {
    const first = { name: other.nodeName, line: lineOf(other) };
    report.note(lineOf(attribute), say.pictureIdTwice({ id: quoted(attribute.value), ...first }));
  }
}

function readSheet(style: Element, report: PictureReport): StyleRule[] {
  const type = style.getAttribute("type") ?? "";
  if (type !== "" && type.toLowerCase() !== "text/css") return [];
  if (!mediaApplies(style.getAttribute("media") ?? "")) return [];
  // Each piece is moved down to its own line, so that lines in the sheet are lines in the file.
  const start = lineOf(style.firstChild ?? style);
  let text = "";
  let line = start;
  for (let node = style.firstChild; node !== null; node = node.nextSibling) {
    if (node.nodeType !== TEXT_NODE && node.nodeType !== CDATA_NODE) continue;
    const piece = "\n".repeat(Math.max(0, lineOf(node) - line)) + (node.nodeValue ?? "");
    text += piece;
    line += piece.split("\n").length - 1;
  }
  return parseStyleSheet(text, start, report);
}
