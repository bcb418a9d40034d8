import sharp from "sharp";
import type { FillRule, Ring } from "../../../src/core/geometry/point.ts";

/** What is drawn: outlines with their rule, later ones over earlier ones; `on` is seen, else it covers what lies below. */
export interface Painted {
  readonly rings: readonly Ring[];
  readonly rule: FillRule;
  readonly on?: boolean;
}

/** How much of each pixel an SVG covers, 0…1, as librsvg draws it in black on white. */
export async function svgRaster(svg: string, width: number, height: number): Promise<Float64Array> {
  const { data, info } = await sharp(Buffer.from(svg), { density: 96, unlimited: true })
    .resize(width, height, { fit: "fill" })
    .flatten({ background: "#fff" })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true });
  if (info.width !== width || info.height !== height) throw new Error(`drawn ${info.width} × ${info.height}`);
  return Float64Array.from({ length: width * height }, (_, i) => 1 - data[i * info.channels]! / 255);
}

/** Outlines in a box as librsvg draws them. `box` is x, y, width and height of what the pixels show. */
export function ringRaster(
  painted: readonly Painted[],
  box: readonly [number, number, number, number],
  [width, height]: readonly [number, number],
): Promise<Float64Array> {
  const paths = painted.map(
    ({ rings, rule, on = true }) =>
      `<path fill="${on ? "#000" : "#fff"}" fill-rule="${rule}" d="${rings.map(pathOf).join("")}"/>`,
  );
  const head = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="${box.join(" ")}" preserveAspectRatio="none">`;
  return svgRaster(`${head}${paths.join("")}</svg>`, width, height);
}

/** Intersection over union of two coverages of the same size. */
export function overlap(a: Float64Array, b: Float64Array): number {
  let both = 0;
  let either = 0;
  for (const [i, one] of a.entries()) {
    both += Math.min(one, b[i]!);
    either += Math.max(one, b[i]!);
  }
  return both / either;
}

function pathOf(ring: Ring): string {
  return `M${ring.map(([x, y]) => `${x.toFixed(6)} ${y.toFixed(6)}`).join("L")}Z`;
}
