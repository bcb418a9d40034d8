import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
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
  if (attribute === null) throw new PictureError(lineOf(use), say.pictureUseNoHref());
  const href = attribute.value.trim();
  const line = lineOf(attribute);
  if (!href.startsWith("#")) {
    throw new PictureError(line, say.pictureUseElsewhere({ href: quoted(href) }));
  }
  const target = byId.get(decodeFragment(href.slice(1)));
  if (target === undefined) throw new PictureError(line, say.pictureUseNoTarget({ href: quoted(href) }));
  if (showing.includes(target)) throw new PictureError(line, say.pictureUseCycle({ href: quoted(href) }));
  const idle = roleOf(target).kind === "idle" && target.localName !== "symbol";
  if (idle) throw new PictureError(line, say.pictureUseIdle({ href: quoted(href), name: target.nodeName }));
  return target;
}

function decodeFragment(fragment: string): string {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}
