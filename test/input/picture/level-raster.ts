import sharp from "sharp";
import type { LevelShape } from "../../../src/core/picture/level-map.ts";
import { covered } from "../svg/raster.ts";

/** An area as shares 0…1 of pixels. */
type Mask = Float64Array;

/** Where librsvg draws a file in a colour: pixels at least half of which are nearer to it than to any other. */
export async function drawnIn(svg: string, size: Size, colour: string, others: readonly string[]): Promise<Mask> {
  const flat = svg.replaceAll(/ filter="[^"]*"/g, "");
  const density = (72 * size.across) / size.nominal;
  const { data, info } = await sharp(Buffer.from(flat), { density, unlimited: true })
    .resize(size.across, size.down, { fit: "fill" })
    .ensureAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const palette = [colour, ...others].map(rgbOf);
  return Float64Array.from({ length: info.width * info.height }, (_, i) => {
    if (data[4 * i + 3]! < 128) return 0;
    const distances = palette.map((to) => to.reduce((sum, part, k) => sum + (part - data[4 * i + k]!) ** 2, 0));
    return distances[0] === Math.min(...distances) ? 1 : 0;
  });
}

/** Pixels of a raster, and the width in px at which librsvg draws the file at 72 dots an inch. */
export interface Size {
  readonly across: number;
  readonly down: number;
  readonly nominal: number;
}

/** Where shapes show a level when later ones cover earlier ones. */
export function shownAt(
  shapes: readonly LevelShape[],
  box: { readonly width: number; readonly height: number },
  level: number,
  { across, down }: Size,
): Mask {
  const shown = new Float64Array(across * down);
  for (const shape of shapes) {
    const own = covered({ ...box, shapes: [shape] }, across, down);
    own.forEach((share, i) => {
      if (share >= 0.5) shown[i] = shape.level === level ? 1 : 0;
    });
  }
  return shown;
}

/** Intersection over union, 0…1. */
export function overlapOf(a: Mask, b: Mask): number {
  let [both, any] = [0, 0];
  a.forEach((share, i) => {
    both += Math.min(share, b[i]!);
    any += Math.max(share, b[i]!);
  });
  return both / any;
}

function rgbOf(hex: string): number[] {
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
}
