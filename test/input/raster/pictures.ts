import sharp, { type Sharp } from "sharp";
import type { Ring } from "../../../src/core/geometry/point.ts";
import { type Problem, ProblemError } from "../../../src/input/files/problem.ts";
import type { Drawn } from "../../../src/input/picture/drawn.ts";
import { drawRaster } from "../../../src/input/raster/draw-raster.ts";
import type { RasterPlan } from "../../../src/input/raster/raster-plan.ts";
import { shoelace } from "../svg/figure.ts";

/** An SVG of 100 by 100 mm on white paper. */
export function drawing(body: string, paper = "#fff"): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="100" height="100" viewBox="0 0 100 100"><rect width="100" height="100" fill="${paper}"/>${body}</svg>`;
}

/** 100 mm at 300 dots an inch. */
export const DPI_300 = 1181;

/** An SVG as librsvg draws it, `side` pixels across and down. */
export function drawn(svg: string, side: number): Sharp {
  return sharp(Buffer.from(svg.replace(/width="100" height="100"/, `width="${side}" height="${side}"`)));
}

/** Traces the bytes of a picture that is 100 mm high on the book. */
export function traced(bytes: Buffer, plan: Partial<RasterPlan> = {}): Drawn {
  return drawRaster(
    { name: "gull.png", bytes, at: ["picture"] },
    {
      trace: "silhouette",
      levels: [1],
      background: 2,
      tolerance: 0.2,
      least: 2,
      mmPerUnit: ({ height }) => 100 / height,
      ...plan,
    },
  );
}

/** What is wrong with tracing it; none where it can be traced. */
export function problemsOf(bytes: Buffer, plan: Partial<RasterPlan> = {}): readonly Problem[] {
  try {
    traced(bytes, plan);
    return [];
  } catch (error) {
    if (error instanceof ProblemError) return error.problems;
    throw error;
  }
}

/** Outlines as an SVG of what they enclose by the even-odd rule, black on white. */
export function outlined({ width, height }: Drawn, rings: readonly Ring[]): string {
  const path = rings.map((ring) => `M${ring.map((point) => point.join(",")).join(" ")}z`).join("");
  return `<svg xmlns="http://www.w3.org/2000/svg" width="100" height="100" viewBox="0 0 ${width} ${height}"><rect width="${width}" height="${height}" fill="#fff"/><path fill-rule="evenodd" d="${path}"/></svg>`;
}

/** What two pictures on white have in common, as a share of what either has: intersection over union of their darkness. */
export async function overlap(a: Sharp, b: Sharp): Promise<number> {
  const [one, other] = await Promise.all(
    [a, b].map((picture) => picture.flatten({ background: "#fff" }).greyscale().raw().toBuffer()),
  );
  let [common, either] = [0, 0];
  one!.forEach((value, i) => {
    common += Math.min(255 - value, 255 - other![i]!);
    either += Math.max(255 - value, 255 - other![i]!);
  });
  return common / either;
}

/** The area of outlines of which holes run against what they are in, in square units. */
export function areaOf(rings: readonly Ring[]): number {
  return Math.abs(rings.reduce((sum, ring) => sum + shoelace(ring), 0));
}
