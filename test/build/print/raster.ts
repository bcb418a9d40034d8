import type { PDFDocumentProxy, PDFPageProxy } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Box } from "./read-pdf.ts";

/** A page as points: how dark each is, 0 to 1. */
export interface Raster {
  readonly width: number;
  readonly dark: Float32Array;
  readonly pointsPerMm: number;
}

/** Renders with pdfjs-dist on the canvas that it brings along for Node. */
export async function rasterOf(document: PDFDocumentProxy, page: PDFPageProxy, dpi: number): Promise<Raster> {
  const viewport = page.getViewport({ scale: dpi / 72 });
  const [width, height] = [Math.ceil(viewport.width), Math.ceil(viewport.height)];
  const factory = document.canvasFactory as {
    create: (width: number, height: number) => { canvas: HTMLCanvasElement; context: CanvasRenderingContext2D };
  };
  const { canvas, context } = factory.create(width, height);
  await page.render({ canvas, canvasContext: context, viewport }).promise;
  const { data } = context.getImageData(0, 0, width, height);
  return {
    width,
    dark: Float32Array.from({ length: width * height }, (_, i) => 1 - data[4 * i + 1]! / 255),
    pointsPerMm: dpi / 25.4,
  };
}

/** A stretch of dark points, mm; a point that is partly dark counts for its part. */
export interface Run {
  readonly start: number;
  readonly end: number;
}

/** Dark runs along the middle of a bar, from 2 mm before to 2 mm beyond it. */
export function darkRuns(raster: Raster, bar: Box, axis: "across" | "upright"): Run[] {
  const { width, dark, pointsPerMm } = raster;
  const [from, to] = axis === "across" ? [bar.left, bar.right] : [bar.top, bar.bottom];
  const middle = axis === "across" ? (bar.top + bar.bottom) / 2 : (bar.left + bar.right) / 2;
  const line = Math.floor(middle * pointsPerMm);
  const darkAt = (i: number): number => dark[axis === "across" ? line * width + i : i * width + line]!;
  const runs: Run[] = [];
  let start: number | undefined;
  for (let i = Math.floor((from - 2) * pointsPerMm); i < (to + 2) * pointsPerMm; i += 1) {
    if (start === undefined && darkAt(i) > 0.02) start = i + 1 - darkAt(i);
    if (start !== undefined && darkAt(i + 1) <= 0.02) {
      runs.push({ start: start / pointsPerMm, end: (i + darkAt(i)) / pointsPerMm });
      start = undefined;
    }
  }
  return runs;
}
