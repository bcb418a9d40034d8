import type { Element } from "@xmldom/xmldom";
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

const ADVICE: Readonly<Partial<Record<StyleProperty, string>>> = {
  "clip-path": "cut the shape itself",
  mask: "cut the shape itself",
  "mask-image": "cut the shape itself",
  filter: "remove it or draw its result",
  "marker-start": "draw the marker as a shape",
  "marker-mid": "draw the marker as a shape",
  "marker-end": "draw the marker as a shape",
};

/** How an element is rendered: geometry properties apply to shapes and `use` (and its symbols), markers to shapes. */
export type RenderedKind = "group" | "use" | "shape";

/**
 * Stops at whatever would change an element's area in a way the reader does not follow.
 *
 * @throws PictureError naming the property or attribute
 */
export function refuseUnhonoured(element: Element, kind: RenderedKind, declared: DeclaredStyle, style: Style): void {
  const name = `<${element.localName}>`;
  for (const attribute of CONDITIONS.filter((condition) => element.hasAttribute(condition))) {
    throw new PictureError(lineOf(element), `${name} ${attribute} cannot be honoured: remove it`);
  }
  if (element.hasAttribute("transform-origin") && element.hasAttribute("transform")) {
    throw new PictureError(lineOf(element), `${name} transform-origin cannot be honoured: write rotate(angle x y)`);
  }
  for (const property of kind === "group" ? MOVING_CSS : [...MOVING_CSS, ...GEOMETRY_CSS]) {
    const found = declared.get(property);
    if (found === undefined) continue;
    throw new PictureError(
      found.line,
      `${name} ${property} ${quoted(found.value)} in css cannot be honoured: write it as an attribute`,
    );
  }
  for (const property of kind === "shape" ? [...CUTTING, ...MARKERS] : CUTTING) {
    if (style[property] === "none") continue;
    const line = declared.get(property)?.line ?? lineOf(element);
    throw new PictureError(
      line,
      `${name} ${property} ${quoted(style[property])} cannot be honoured: ${ADVICE[property]}`,
    );
  }
}
