import type { Element, Node } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { PictureError, quoted, ValueError } from "./picture-error.ts";
import { parseSvgLength } from "./svg-length.ts";

/** Line of a node in the file, 1-based. */
export function lineOf(node: Node): number {
  return node.lineNumber ?? 1;
}

/** An attribute without namespace parsed, or undefined when it is absent; what the parser rejects gets its line. */
export function readAttribute<T>(element: Element, name: string, parse: (text: string) => T): T | undefined {
  const attribute = element.getAttributeNode(name);
  if (attribute === null) return undefined;
  return atLine(lineOf(attribute), `<${element.localName}> ${name}`, () => parse(attribute.value));
}

/** Runs a parser and gives its ValueError a line and the name of what it was reading. */
export function atLine<T>(line: number, what: string, parse: () => T): T {
  try {
    return parse();
  } catch (error) {
    if (error instanceof ValueError) throw new PictureError(line, error.about(what));
    throw error;
  }
}

/** A length attribute in user units, or undefined when it is absent or `auto`. */
export function readLength(element: Element, name: string, percentOf: number | undefined): number | undefined {
  return readAttribute(element, name, (text) => (text.trim() === "auto" ? undefined : parseSvgLength(text, percentOf)));
}

/** As {@link readLength}, for sizes and radii: a negative one is an error. */
export function readSize(element: Element, name: string, percentOf: number | undefined): number | undefined {
  return readAttribute(element, name, (text) => {
    if (text.trim() === "auto") return undefined;
    const size = parseSvgLength(text, percentOf);
    if (size < 0) throw new ValueError((what) => say.pictureNegative({ what, value: quoted(text) }));
    return size;
  });
}
