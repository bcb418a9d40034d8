import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { readAttribute } from "./attribute.ts";
import { quoted, ValueError } from "./picture-error.ts";
import { parseSvgLength } from "./svg-length.ts";
import { parseViewBox, type ViewBox } from "./view-box.ts";

/**
 * The canvas: the root's viewBox, or without one its width and height in px with the corner at 0,0; undefined where there is
 * neither.
 *
 * @throws PictureError when a size is not above 0
 */
export function readPictureBox(root: Element): ViewBox | undefined {
  const box = readAttribute(root, "viewBox", parseViewBox);
  if (box !== undefined) return box;
  const width = readSide(root, "width");
  const height = readSide(root, "height");
  return width === undefined || height === undefined ? undefined : { x: 0, y: 0, width, height };
}

/** How many units of the canvas a px of the screen has, for strokes that keep their width however large the picture is. */
export function pixelOf(root: Element, box: ViewBox): number {
  const width = readSide(root, "width");
  const height = readSide(root, "height");
  const scales = [width && width / box.width, height && height / box.height].filter((scale) => scale !== undefined);
  return scales.length === 0 ? 1 : 1 / Math.min(...scales);
}

/** A side in px; undefined for `auto` and for a share of what there is no whole of. */
function readSide(root: Element, name: "width" | "height"): number | undefined {
  return readAttribute(root, name, (text) => {
    if (/%\s*$/.test(text) || text.trim() === "auto") return undefined;
    const side = parseSvgLength(text, undefined);
    if (side <= 0) throw new ValueError((what) => say.pictureNotAboveZero({ what, value: quoted(text) }));
    return side;
  });
}
