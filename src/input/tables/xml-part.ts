import { DOMParser, type Element } from "@xmldom/xmldom";
import { childElements } from "../svg/svg-document.ts";
import { surveyXml } from "../svg/xml-survey.ts";

/** A part of a spreadsheet that is not as its format has it. */
export class BrokenPart extends Error {}

/** The root of an XML part, without a document type. @throws BrokenPart */
export function rootOf(text: string | undefined): Element {
  if (text === undefined || text.includes("<!DOCTYPE")) throw new BrokenPart();
  try {
    surveyXml(text);
    const onError = (): void => {
      throw new BrokenPart();
    };
    return new DOMParser({ onError }).parseFromString(text, "application/xml").documentElement!;
  } catch {
    throw new BrokenPart();
  }
}

/** The child elements with a name, whatever their prefix. */
export function childrenNamed(element: Element, ...names: readonly string[]): Element[] {
  return childElements(element).filter(({ localName }) => names.includes(localName!));
}

/** An attribute by its name without the prefix. */
export function attributeOf(element: Element, name: string): string | undefined {
  return [...element.attributes].find(({ localName }) => localName === name)?.value;
}

/** Elements with a name anywhere below. */
export function allNamed(element: Element, name: string): Element[] {
  return childElements(element).flatMap((child) => [
    ...(child.localName === name ? [child] : []),
    ...allNamed(child, name),
  ]);
}
