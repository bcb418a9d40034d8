import { PDFDocument, type PDFPage, rgb } from "@cantoo/pdf-lib";
import { type CutDrawing, OPERATIONS, type Operation, type ToolPath } from "../../core/packing/operation.ts";
import { MM_PER_INCH } from "../../core/units/length.ts";
import type { NamedDrawing } from "../../output/cut/cut-forms.ts";
import { inStrokes, strokesOf } from "../../output/cut/stroke-letters.ts";
import { linePath, ringPath } from "../../output/drawing/path.ts";

/** Points of a PDF to the millimetre. */
const POINTS = 72 / MM_PER_INCH;

/** How a line is drawn for a knife: width, grey from 0 (black) and dashes, mm. Told apart by pattern as well as by tone. */
const LOOK: Readonly<
  Record<Operation, { readonly width: number; readonly grey: number; readonly dash: readonly number[] }>
> = {
  "through-cut": { width: 0.25, grey: 0, dash: [] },
  "press-score": { width: 0.25, grey: 0, dash: [3, 1.5] },
  "pencil-mark": { width: 0.2, grey: 0.45, dash: [] },
  "measure-check": { width: 0.2, grey: 0.3, dash: [0.6, 0.9] },
};

/** Where a sheet's name stands in its free edge, and the height of its letters, mm. */
const NAME = { left: 8, top: 2.5, height: 3 } as const;

/** Drawings for cutters as one PDF for a knife: a page of each drawing's own size, lines at true scale, the file's name at its head. */
export async function cutSheetsPdf(drawings: readonly NamedDrawing[]): Promise<Uint8Array> {
  const pdf = await PDFDocument.create();
  for (const { name, drawing } of drawings) {
    const page = pdf.addPage([drawing.width * POINTS, drawing.height * POINTS]);
    drawOn(page, { ...drawing, paths: [...nameAt(name), ...drawing.paths] });
  }
  return await pdf.save({ useObjectStreams: false, addDefaultPage: false });
}

function nameAt(name: string): ToolPath[] {
  return strokesOf(inStrokes(name), NAME.height).map((stroke) => ({
    operation: "pencil-mark",
    points: stroke.map(([x, y]) => [x + NAME.left, y + NAME.top]),
    closed: false,
  }));
}

function drawOn(page: PDFPage, { paths, height }: CutDrawing): void {
  for (const operation of OPERATIONS.toReversed()) {
    const { width, grey, dash } = LOOK[operation];
    for (const { points, closed } of paths.filter((path) => path.operation === operation))
      page.drawSvgPath(closed ? ringPath(points, 4) : linePath(points, 4), {
        x: 0,
        y: height * POINTS,
        scale: POINTS,
        borderColor: rgb(grey, grey, grey),
        borderWidth: width,
        ...(dash.length > 0 ? { borderDashArray: [...dash] } : {}),
      });
  }
}
