import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { lineOf } from "./attribute.ts";
import type { DeclaredStyle } from "./cascade.ts";
import type { RenderedKind } from "./element-role.ts";
import { PictureError, quoted } from "./picture-error.ts";
import type { PictureReport } from "./picture-report.ts";
import type { Style, StyleProperty } from "./style-property.ts";

const MOVING_CSS = ["transform", "translate", "rotate", "scale", "offset", "offset-path"];
const GEOMETRY_CSS = ["d", "x", "y", "cx", "cy", "r", "rx", "ry", "width", "height"];
const MARKERS: readonly StyleProperty[] = ["marker-start", "marker-mid", "marker-end"];

/**
 * Stops at what would change an element's area in a way the reader does not follow, and notes what it leaves out.
 *
 * @throws PictureError naming the property or attribute
 */
export function tellUnhonoured(
  element: Element,
  kind: RenderedKind,
  declared: DeclaredStyle,
  style: Style,
  report: PictureReport,
): void {
  const name = element.localName!;
  const moves = element.hasAttribute("transform") || MOVING_CSS.some((property) => declared.has(property));
  if (moves && (element.hasAttribute("transform-origin") || declared.has("transform-origin"))) {
    throw new PictureError(lineOf(element), say.pictureTransformOrigin({ name }));
  }
  const sized = kind === "shape" || kind === "use";
  for (const property of sized ? [...MOVING_CSS, ...GEOMETRY_CSS] : MOVING_CSS) {
    const found = declared.get(property);
    if (found === undefined || /^(?:none|auto|initial|unset)$/.test(found.value)) continue;
    throw new PictureError(found.line, say.pictureCssGeometry({ name, property, value: quoted(found.value) }));
  }
  if (style.filter !== "none") {
    report.note(declared.get("filter")?.line ?? lineOf(element), say.pictureFilter({ name }));
  }
  if (kind !== "shape" || MARKERS.every((property) => style[property] === "none")) return;
  report.note(lineOf(element), say.pictureMarker({ name }));
}
