import bidiFactory from "bidi-js";
import type { Typeface } from "./typeface.ts";

/** A stretch of a line that is shaped in one go: one font, one script and one direction. */
export interface TextRun {
  readonly text: string;
  readonly font: Typeface;
  readonly rightToLeft: boolean;
}

/** Scripts that people write; others are shaped with the letters before them. */
const SCRIPTS = (
  "Latin Greek Cyrillic Armenian Hebrew Arabic Syriac Thaana Nko Devanagari Bengali Gurmukhi Gujarati Oriya Tamil Telugu " +
  "Kannada Malayalam Sinhala Thai Lao Tibetan Myanmar Georgian Hangul Ethiopic Cherokee Khmer Mongolian Hiragana Katakana " +
  "Bopomofo Han Coptic Gothic Runic Ogham Tifinagh Javanese Balinese"
)
  .split(" ")
  .map((name) => new RegExp(`\\p{Script=${name}}`, "u"));

const bidi = bidiFactory();
const graphemes = new Intl.Segmenter("und", { granularity: "grapheme" });

/** The runs of a line from left to right. `fonts` are asked in order; every letter is covered by one of them. */
export function runsOf(line: string, fonts: Iterable<Typeface>): TextRun[] {
  const { levels } = bidi.getEmbeddingLevels(line);
  const runs: (TextRun & { readonly level: number; readonly script: number })[] = [];
  for (const { segment, index } of graphemes.segment(line)) {
    const last = runs.at(-1);
    const level = levels[index]!;
    const font = fontOf(segment, fonts, last?.font);
    const found = SCRIPTS.findIndex((script) => script.test(segment));
    const script = found < 0 ? (last?.script ?? found) : found;
    const joins = last?.font === font && last.level === level && (last.script === script || last.script < 0);
    if (joins) runs[runs.length - 1] = { ...last, text: last.text + segment, script };
    else runs.push({ text: segment, font, rightToLeft: level % 2 === 1, level, script });
  }
  return reordered(runs);
}

/** The first font that has all of a letter; of what none has, such as a joiner, the one before. */
function fontOf(letter: string, fonts: Iterable<Typeface>, before: Typeface | undefined): Typeface {
  const points = [...letter].map((point) => point.codePointAt(0)!);
  let first: Typeface | undefined;
  for (const font of fonts) {
    first ??= font;
    if (points.every(font.covers)) return font;
  }
  return before ?? first!;
}

/** Source: Unicode Standard Annex 9, rule L2: stretches of a level or higher are turned around, the highest level first. */
function reordered<T extends { readonly level: number }>(runs: readonly T[]): T[] {
  let order = [...runs];
  for (let level = Math.max(0, ...runs.map((run) => run.level)); level > 0; level -= 1) {
    const turned: T[] = [];
    for (let at = 0; at < order.length; ) {
      let end = at;
      while (end < order.length && order[end]!.level >= level) end += 1;
      turned.push(...(end > at ? order.slice(at, end).reverse() : [order[end++]!]));
      at = end;
    }
    order = turned;
  }
  return order;
}
