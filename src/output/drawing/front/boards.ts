import type { Fan } from "../../../core/fan/fan.ts";
import type { PatternBase } from "../../../core/pattern/pattern.ts";
import { tag } from "../svg-text.ts";
import { inMood, type Mood } from "./tone.ts";

/** Cloth of the boards, chosen by the kit's slug, so that a catalogue is not all of one colour. */
const CLOTHS = [
  [36, 80, 90],
  [122, 59, 52],
  [61, 74, 107],
  [79, 93, 58],
  [106, 74, 98],
] as const;

/** Both boards behind the leaves, with a light and a dark edge. */
export function boards(pattern: PatternBase, fan: Fan, slug: string, mood: Mood): string {
  const { book } = pattern;
  const half = book.blockThickness / 2 + book.boardThickness;
  const tip = half + (book.leafWidth + book.square) * Math.sin(Math.min(fan.opening, Math.PI) / 2);
  const top = -book.square;
  const height = book.leafHeight + 2 * book.square;
  const edge = book.boardThickness * 0.6;
  return [
    tag("rect", { x: -tip, y: top, width: 2 * tip, height, rx: 1, fill: inMood(clothOf(slug), mood) }),
    tag("rect", { x: -tip, y: top, width: edge, height, fill: "#ffffff", "fill-opacity": "0.18" }),
    tag("rect", { x: tip - edge, y: top, width: edge, height, fill: "#000000", "fill-opacity": "0.22" }),
  ].join("");
}

/** A kit's cloth, 0 to 255 each of red, green, blue. */
export function clothOf(slug: string): readonly [number, number, number] {
  const sum = [...slug].reduce((total, letter) => total + letter.charCodeAt(0), 0);
  return CLOTHS[sum % CLOTHS.length]!;
}
