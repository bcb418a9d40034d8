import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { type Area, areaOfRings, outlinesOf, unite } from "../../core/geometry/area.ts";
import type { Motif } from "../../core/window/motif.ts";
import { readSvg } from "../svg/read-svg.ts";

/** Motifs of a site: every SVG in a folder, by name. @throws Error where one is not a single connected silhouette */
export function readMotifs(folder: string): Motif[] {
  const files = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith(".svg")) : [];
  return files.sort().map((file) => {
    const picture = readSvg(readFileSync(join(folder, file), "utf8"));
    const area = picture.shapes.reduce<Area>((all, shape) => unite(all, areaOfRings(shape.rings, shape.rule)), []);
    const pieces = outlinesOf(area).outer.length;
    if (pieces !== 1)
      throw new Error(
        `${join(folder, file)}: a motif is one connected silhouette, and this one has ${pieces} pieces: join them`,
      );
    return { name: file.replace(/\.svg$/, ""), area };
  });
}
