import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { lineOf } from "./attribute.ts";
import type { DeclaredStyle } from "./cascade.ts";
import { PictureError, quoted } from "./picture-error.ts";
import type { Style, StyleProperty } from "./style-property.ts";

/** Attributes that make showing an element depend on its reader. */
const CONDITIONS = ["systemLanguage", "requiredExtensions"];
const MOVING_CSS = [
  "transform",
  "transform-origin",
  "transform-box",
  "translate",
  "rotate",
  "scale",
  "offset",
  "offset-path",
  "all",
];
const GEOMETRY_CSS = ["d", "x", "y", "cx", "cy", "r", "rx", "ry", "width", "height"];
const CUTTING: readonly StyleProperty[] = ["clip-path", "mask", "mask-image", "filter"];
const MARKERS: readonly StyleProperty[] = ["marker-start", "marker-mid", "marker-end"];

/** How an element is rendered: geometry properties apply to shapes and `use` (and its symbols), markers to shapes. */
export type RenderedKind = "group" | "use" | "shape";

/**
 * Stops at whatever would change an element's area in a way the reader does not follow.
 *
 * @throws PictureError naming the property or attribute
 */
export function refuseUnhonoured(element: Element, kind: RenderedKind, declared: DeclaredStyle, style: Style): void {
  const name = element.localName!;
  for (const attribute of CONDITIONS.filter((condition) => element.hasAttribute(condition))) {
    throw new PictureError(lineOf(element), say.pictureCondition({ name, attribute }));
  }
  if (element.hasAttribute("transform-origin") && element.hasAttribute("transform")) {
    throw new PictureError(lineOf(element), say.pictureTransformOrigin({ name }));
  }
  for (const property of kind === "group" ? MOVING_CSS : [...MOVING_CSS, ...GEOMETRY_CSS]) {
    const found = declared.get(property);
    if (found === undefined) continue;
    throw new PictureError(found.line, say.pictureCssGeometry({ name, property, value: quoted(found.value) }));
  }
  for (const property of kind === "shape" ? [...CUTTING, ...MARKERS] : CUTTING) {
    if (style[property] === "none") continue;
    const line = declared.get(property)?.line ?? lineOf(element);
    throw new PictureError(
      line,
      say.pictureUnsupported({ name, property, value: quoted(style[property]), advice: adviceFor(property) }),
    );
  }
}

/** What to do in place of a property that changes what is filled. */
function adviceFor(property: StyleProperty): "cut" | "draw" | "marker" {
  if (MARKERS.includes(property)) return "marker";
  return property === "filter" ? "draw" : "cut";
}
