import { translation } from "../../core/geometry/affine.ts";
import * as say from "../../words/messages.ts";
import { lineOf } from "./attribute.ts";
import { checkLength } from "./outline-length.ts";
import { NO_CONTEXT } from "./paint.ts";
import { readPictureBox } from "./picture-box.ts";
import { PictureError } from "./picture-error.ts";
import { PictureWalk } from "./picture-walk.ts";
import { INITIAL_STYLE } from "./style-property.ts";
import { parseSvgDocument } from "./svg-document.ts";
import type { SvgPicture } from "./svg-picture.ts";
import { viewportOf } from "./view-box.ts";

export { PictureError };

/** The longer side of a picture in chord errors: a curve strays from its chords by at most 1/200000 of it. */
const CHORD_ERRORS_PER_SIDE = 200_000;

/**
 * Reads an SVG file as filled areas: what SVG 2 would paint, strokes left out, flattened to straight outlines.
 * Units are those of the root's viewBox (px without one), x to the right, y down, the viewBox's corner at 0,0.
 * Vertices lie on the true curves; a chord strays from its curve by at most max(width, height) / 200000.
 * Nothing but the text is read, and shapes are not cut to the viewBox.
 *
 * @param text the whole file
 * @throws PictureError for malformed files and for whatever would change the filled areas but is not followed
 */
export function readSvg(text: string): SvgPicture {
  const document = parseSvgDocument(text);
  const { root, byId } = document;
  if (root.hasAttribute("transform")) {
    throw new PictureError(lineOf(root), say.pictureRootTransform());
  }
  const box = readPictureBox(root);
  const walk = new PictureWalk(document, Math.max(box.width, box.height) / CHORD_ERRORS_PER_SIDE);
  walk.visit(root, {
    map: translation(-box.x, -box.y),
    style: INITIAL_STYLE,
    ids: [],
    viewport: viewportOf(box),
    depth: 0,
    showing: [],
    context: NO_CONTEXT,
  });
  checkLength({ width: box.width, height: box.height, shapes: walk.shapes });
  return {
    width: box.width,
    height: box.height,
    shapes: walk.shapes,
    ids: new Map([...byId].map(([id, element]) => [id, lineOf(element)])),
    notes: walk.notes,
  };
}
