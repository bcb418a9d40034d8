import { translation } from "../../core/geometry/affine.ts";
import { boxOf } from "../../core/geometry/box.ts";
import * as say from "../../words/messages.ts";
import { lineOf } from "./attribute.ts";
import type { Letters } from "./letters.ts";
import { checkLength } from "./outline-length.ts";
import { NO_CONTEXT } from "./paint.ts";
import { pixelOf, readPictureBox } from "./picture-box.ts";
import { PictureError } from "./picture-error.ts";
import { PictureReport } from "./picture-report.ts";
import { PictureWalk } from "./picture-walk.ts";
import { INITIAL_STYLE } from "./style-property.ts";
import { parseSvgDocument, type SvgDocument } from "./svg-document.ts";
import type { PaintedShape, SvgPicture } from "./svg-picture.ts";
import { type ViewBox, viewportOf } from "./view-box.ts";

export { PictureError };

/** What a picture is read with. */
export interface SvgOptions {
  /** Sets the words of `text` elements. */
  readonly letters?: Letters;
}

/** The longer side of a picture in chord errors: a curve strays from its chords by at most 1/200000 of it. */
const CHORD_ERRORS_PER_SIDE = 200_000;

/** The canvas of a drawing that states none, as long as its own box is not known. Source: CSS 2.2, "Inline, replaced elements". */
const UNSTATED: ViewBox = { x: 0, y: 0, width: 300, height: 150 };

/**
 * Reads an SVG file as areas: what SVG 2 would paint, strokes as the areas that they cover, flattened to straight outlines.
 * Units are those of the root's viewBox (px without one), x to the right, y down, the viewBox's corner at 0,0.
 * Vertices lie on the true curves; a chord strays from its curve by at most max(width, height) / 200000.
 * Nothing but the text is read, and shapes are not cut to the viewBox.
 *
 * @param text the whole file
 * @throws PictureError with everything that would change the areas but is not followed, or with what is no picture at all
 */
export function readSvg(text: string, options: SvgOptions = {}): SvgPicture {
  const report = new PictureReport();
  const document = parseSvgDocument(text, report);
  let box: ViewBox | undefined;
  report.attempt(() => {
    box = readPictureBox(document.root) ?? boxOfDrawing(document, options);
  });
  if (box === undefined) report.stopAtFaults();
  const canvas = box!;
  if (readPictureBox(document.root) === undefined) {
    report.note(lineOf(document.root), say.pictureOwnBox({ box: boxText(canvas) }));
  }
  const shapes = walk(document, canvas, report, options);
  report.stopAtFaults();
  const { width, height } = canvas;
  checkLength({ width, height, shapes });
  const ids = new Map([...document.byId].map(([id, element]) => [id, lineOf(element)]));
  return { width, height, shapes, ids, notes: report.notes };
}

function walk(
  document: SvgDocument,
  box: ViewBox,
  report: PictureReport,
  { letters }: SvgOptions,
): readonly PaintedShape[] {
  const tolerance = Math.max(box.width, box.height) / CHORD_ERRORS_PER_SIDE;
  const reading = new PictureWalk({ document, box, tolerance, pixel: pixelOf(document.root, box), report, letters });
  reading.visit(document.root, {
    map: translation(-box.x, -box.y),
    style: INITIAL_STYLE,
    called: [],
    viewport: viewportOf(box),
    depth: 0,
    showing: [],
    context: NO_CONTEXT,
    clipping: false,
  });
  return reading.shapes;
}

/** The box of what is drawn, for a drawing that states no size. @throws PictureError where nothing is drawn */
function boxOfDrawing(document: SvgDocument, options: SvgOptions): ViewBox {
  const report = new PictureReport();
  const shapes = walk(document, UNSTATED, report, options);
  report.stopAtFaults();
  const { left, top, right, bottom } = boxOf(shapes.flatMap(({ rings }) => rings));
  if (!(right > left && bottom > top)) throw new PictureError(lineOf(document.root), say.pictureNoSize());
  return { x: left, y: top, width: right - left, height: bottom - top };
}

function boxText({ x, y, width, height }: ViewBox): string {
  return [x, y, width, height].map((value) => Number(value.toPrecision(5))).join(" ");
}
