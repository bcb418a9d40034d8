import { runsOf } from "./text-run.ts";
import type { Glyph, Typeface } from "./typeface.ts";

/** Letters that stay together when a line is bent: a letter with its marks. Lengths as a share of the letters' height. */
export interface Cluster {
  readonly font: Typeface;
  /** Where it begins on its line. */
  readonly x: number;
  readonly advance: number;
  readonly glyphs: readonly Glyph[];
}

/** A line of letters from left to right. */
export interface SetLine {
  readonly clusters: readonly Cluster[];
  readonly advance: number;
}

/** Sets a line in the first of the fonts that has each letter, with room between letters as a share of their height. */
export function setLine(text: string, fonts: Iterable<Typeface>, spacing: number): SetLine {
  const clusters: Cluster[] = [];
  let x = 0;
  for (const { font, text: letters, rightToLeft } of runsOf(text, fonts)) {
    for (const glyphs of clustersOf(font.shape(letters, { rightToLeft, apart: spacing !== 0 }))) {
      const advance = glyphs.reduce((sum, glyph) => sum + glyph.advance, 0);
      clusters.push({ font, x, advance, glyphs });
      x += advance + spacing;
    }
  }
  return { clusters, advance: clusters.length > 0 ? x - spacing : 0 };
}

function clustersOf(glyphs: readonly Glyph[]): Glyph[][] {
  const clusters: Glyph[][] = [];
  for (const glyph of glyphs) {
    const last = clusters.at(-1);
    if (last && last[0]!.cluster === glyph.cluster) last.push(glyph);
    else clusters.push([glyph]);
  }
  return clusters;
}
