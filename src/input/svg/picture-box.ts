import type { Element } from "@xmldom/xmldom";
import * as say from "../../words/messages.ts";
import { lineOf, readAttribute } from "./attribute.ts";
import { PictureError, quoted, ValueError } from "./picture-error.ts";
import { parseSvgLength } from "./svg-length.ts";
import { parseViewBox, type ViewBox } from "./view-box.ts";

/**
 * The picture's rectangle: the root's viewBox, or without one its width and height in px with the corner at 0,0.
 *
 * @throws PictureError when there is neither, or a size is not above 0
 */
export function readPictureBox(root: Element): ViewBox {
  const box = readAttribute(root, "viewBox", parseViewBox);
  if (box !== undefined) return box;
  const width = readAttribute(root, "width", parseSide);
  const height = readAttribute(root, "height", parseSide);
  if (width === undefined || height === undefined) {
    throw new PictureError(lineOf(root), say.pictureNoSize());
  }
  return { x: 0, y: 0, width, height };
}

function parseSide(text: string): number {
  const side = parseSvgLength(text, undefined);
  if (side <= 0) throw new ValueError((what) => say.pictureNotAboveZero({ what, value: quoted(text) }));
  return side;
}
