import { uncoveredIn } from "../fonts/uncovered.ts";
import type { Letters } from "../svg/letters.ts";
import { clusterRings } from "./glyph-rings.ts";
import { projectFamily, projectFonts } from "./project-fonts.ts";
import { setLine } from "./set-line.ts";

/** As a share of their height, how far chords stray from the curves of letters. */
const TOLERANCE = 5e-5;

/** Sets a line in the first of the families that comes with the project; undefined where none does, or where it lacks a letter. */
export const letters: Letters = (text, { families, size, weight, italic }) => {
  const family = families.map(projectFamily).find((found) => found !== undefined);
  if (family === undefined || !(size > 0)) return undefined;
  const fonts = projectFonts(family, weight, italic);
  const line = text.normalize("NFC").replace(/\s/g, " ");
  const has = (codePoint: number): boolean => [...fonts].some((font) => font.covers(codePoint));
  if (uncoveredIn(line, has).length > 0) return undefined;
  const { clusters, advance } = setLine(line, fonts, 0);
  const rings = clusters.flatMap((cluster) =>
    clusterRings(cluster, [size, 0, 0, size, cluster.x * size, 0], TOLERANCE * size),
  );
  return { rings, advance: advance * size };
};
