import type { Ring } from "../../core/geometry/point.ts";
import { uncoveredIn } from "../fonts/uncovered.ts";
import { clusterRings } from "./glyph-rings.ts";
import { projectFamily, projectFonts } from "./project-fonts.ts";
import { setLine } from "./set-line.ts";

/** How letters are asked for in a drawing. */
export interface LetterStyle {
  /** Names of families, the first that is at hand is taken: `Literata, serif`. */
  readonly family: string;
  /** Height of the letters, in any unit. */
  readonly size: number;
  /** 100 to 900; 400 is regular. */
  readonly weight: number;
  readonly italic: boolean;
  /** Room between letters, in the unit of the size. */
  readonly spacing?: number;
}

/** Letters of a line as areas, to be filled nonzero. */
export interface SetLetters {
  /** The line begins at 0,0 on its baseline and runs to the right; y down. */
  readonly rings: readonly Ring[];
  readonly advance: number;
}

/** As a share of their height, how far chords stray from the curves of letters. */
const TOLERANCE = 5e-5;

/** A line of letters. Undefined where no font of these families is at hand, or where it lacks a letter. */
export function letters(text: string, style: LetterStyle): SetLetters | undefined {
  const family = style.family
    .split(",")
    .map((name) => projectFamily(name.trim().replace(/^(["'])(.*)\1$/, "$2")))
    .find((found) => found !== undefined);
  if (family === undefined || !(style.size > 0)) return undefined;
  const { size, spacing = 0 } = style;
  const fonts = projectFonts(family, style.weight, style.italic);
  const line = text.normalize("NFC").replace(/\s/g, " ");
  const has = (codePoint: number): boolean => [...fonts].some((font) => font.covers(codePoint));
  if (uncoveredIn(line, has).length > 0) return undefined;
  const { clusters, advance } = setLine(line, fonts, spacing / size);
  const rings = clusters.flatMap((cluster) =>
    clusterRings(cluster, [size, 0, 0, size, cluster.x * size, 0], TOLERANCE * size),
  );
  return { rings, advance: advance * size };
}
