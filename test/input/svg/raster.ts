import sharp from "sharp";
import type { Outlines } from "../../../src/input/svg/picture-areas.ts";
import { readSvg } from "../../../src/input/svg/read-svg.ts";
import type { SvgPicture } from "../../../src/input/svg/svg-picture.ts";
import { edgesOf, filledStretches } from "./figure.ts";

/** Pixels across, of drawings that are compared. */
export const SIDE = 1000;
/** Sample rows in a pixel, and sample columns. */
const FINE = 4;

/** The opacity 0…1 of each pixel as librsvg draws the file, `width` by `height` pixels. */
export async function drawn(svg: string, width: number, height: number): Promise<Float64Array> {
  // At 96 dots an inch librsvg takes units as CSS does; sharp then makes 4 pixels of 3 px.
  const sized = svg.replace("<svg ", `<svg width="${width * 0.75}" height="${height * 0.75}" `);
  const { data, info } = await sharp(Buffer.from(sized), { density: 96 })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  if (info.width !== width || info.height !== height) throw new Error(`drawn ${info.width} × ${info.height}`);
  return Float64Array.from({ length: width * height }, (_, i) => data[4 * i + 3]! / 255);
}

/** The share 0…1 of FINE × FINE sample points of each pixel that any shape covers. */
export function covered(
  picture: Pick<SvgPicture, "width" | "height"> & { readonly shapes: readonly Outlines[] },
  width: number,
  height: number,
): Float64Array {
  const samples = new Uint8Array(width * FINE * height * FINE);
  const scale = (width * FINE) / picture.width;
  for (const { rings, rule } of picture.shapes) {
    const edges = edgesOf(rings.map((ring) => ring.map(([x, y]): [number, number] => [x * scale, y * scale])));
    const byRow = edgesByRow(edges, height * FINE);
    byRow.forEach((rowEdges, row) => {
      for (const [from, to] of filledStretches(rowEdges, rule, row + 0.5)) {
        const first = Math.max(0, Math.ceil(from - 0.5));
        const last = Math.min(width * FINE - 1, Math.ceil(to - 0.5) - 1);
        if (first <= last) samples.fill(1, row * width * FINE + first, row * width * FINE + last + 1);
      }
    });
  }
  const shares = new Float64Array(width * height);
  for (let row = 0, at = 0; row < height * FINE; row += 1) {
    const first = Math.floor(row / FINE) * width;
    for (let x = 0; x < width; x += 1) {
      let hits = 0;
      for (let fine = 0; fine < FINE; fine += 1, at += 1) hits += samples[at]!;
      shares[first + x]! += hits / FINE ** 2;
    }
  }
  return shares;
}

/** How a picture differs from what librsvg draws; areas in pixels. */
export interface Comparison {
  readonly wrong: number;
  readonly edge: number;
  readonly filled: number;
  readonly off: number;
  /** Intersection over union, 0…1. */
  readonly overlap: number;
}

type Edge = ReturnType<typeof edgesOf>[number];

function edgesByRow(edges: readonly Edge[], rows: number): Edge[][] {
  const byRow = Array.from({ length: rows }, (): Edge[] => []);
  for (const edge of edges) {
    const top = Math.max(0, Math.floor(Math.min(edge[0][1], edge[1][1]) - 1));
    const bottom = Math.min(rows - 1, Math.ceil(Math.max(edge[0][1], edge[1][1]) + 1));
    for (let row = top; row <= bottom; row += 1) byRow[row]!.push(edge);
  }
  return byRow;
}

/**
 * Compares the picture with the drawing, pixel by pixel. The bound: what librsvg leaves empty or fills wholly, and the
 * same of the picture, must agree at every pixel that no outline crosses in either; a pixel on an outline may differ by
 * the coarseness of both samplings. `edge` counts those, `wrong` counts pixels that differ by more than half.
 */
export async function compare(svg: string, side = SIDE): Promise<Comparison> {
  const picture = readSvg(svg);
  const height = Math.round((side * picture.height) / picture.width);
  const theirs = await drawn(svg, side, height);
  const ours = covered(picture, side, height);
  const result = { wrong: 0, edge: 0, filled: 0, off: 0, overlap: 0 };
  let [both, any] = [0, 0];
  theirs.forEach((alpha, i) => {
    const difference = Math.abs(alpha - ours[i]!);
    const onEdge = (alpha > 0 && alpha < 1) || (ours[i]! > 0 && ours[i]! < 1);
    result.edge += onEdge ? 1 : 0;
    result.filled += ours[i]!;
    result.off += alpha - ours[i]!;
    both += Math.min(alpha, ours[i]!);
    any += Math.max(alpha, ours[i]!);
    if (difference > (onEdge ? 0.5 : 0)) result.wrong += 1;
  });
  return { ...result, overlap: both / any };
}
