import type { Element } from "@xmldom/xmldom";
import { lineOf } from "./attribute.ts";
import { roleOf } from "./element-role.ts";
import { PictureError, quoted } from "./picture-error.ts";

const XLINK_NAMESPACE = "http://www.w3.org/1999/xlink";

/**
 * The element that a `use` shows; `href` goes before `xlink:href`.
 *
 * @param showing targets of the `use` elements around this one
 * @throws PictureError when there is none, it is in another file, cannot be shown, or shows itself
 */
export function resolveUse(use: Element, byId: ReadonlyMap<string, Element>, showing: readonly Element[]): Element {
  const attribute = use.getAttributeNode("href") ?? use.getAttributeNodeNS(XLINK_NAMESPACE, "href");
  if (attribute === null) throw new PictureError(lineOf(use), "<use> has no href: name the id of a shape or group");
  const href = attribute.value.trim();
  const line = lineOf(attribute);
  if (!href.startsWith("#")) {
    throw new PictureError(line, `<use> href ${quoted(href)} is not in this file: write "#" and an id of it`);
  }
  const target = byId.get(decodeFragment(href.slice(1)));
  if (target === undefined)
    throw new PictureError(line, `<use> href ${quoted(href)} has no target: no element has this id`);
  if (showing.includes(target))
    throw new PictureError(line, `<use> href ${quoted(href)} shows itself: break the cycle`);
  const idle = roleOf(target).kind === "idle" && target.localName !== "symbol";
  if (idle) throw new PictureError(line, `<use> href ${quoted(href)} is a <${target.nodeName}>: name a shape or group`);
  return target;
}

function decodeFragment(fragment: string): string {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}
