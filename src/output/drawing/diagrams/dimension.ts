import { wordsWidth } from "../words-width.ts";
import { type At, type Look, TEXT, THIN } from "./ink.ts";
import type { WordsStyle } from "./pen-words.ts";

export type Side = "left" | "right";

type Liner = (points: readonly At[], look: Look) => string;
type Writer = (at: At, words: string, style?: WordsStyle) => string;

const TICK = 1;
const GAP = 0.7;
const BEYOND = 1;

/** Lines of a level dimension at y: with ticks at both ends, and extension lines that begin at the height `from`. */
export function levelDimension(line: Liner, x1: number, x2: number, y: number, from: number | undefined): string {
  const side = Math.sign(y - (from ?? y));
  const segment = (fromX: number, top: number, toX: number, foot: number): string =>
    line(
      [
        [fromX, top],
        [toX, foot],
      ],
      THIN,
    );
  const ends = [x1, x2].map(
    (x) =>
      segment(x, y - TICK, x, y + TICK) +
      (from === undefined ? "" : segment(x, from + side * GAP, x, y + side * BEYOND)),
  );
  return segment(x1, y, x2, y) + ends.join("");
}

/** Words of a level dimension: above it, or at its outside where they are wider than it. */
export function levelDimensionWords(
  words: Writer,
  x1: number,
  x2: number,
  y: number,
  content: string,
  outside: Side = "right",
): string {
  if (wordsWidth(content, TEXT) <= Math.abs(x2 - x1) - 0.6)
    return words([(x1 + x2) / 2, y - 0.8], content, { anchor: "middle" });
  return outside === "right"
    ? words([Math.max(x1, x2) + 1.6, y + 1], content)
    : words([Math.min(x1, x2) - 1.6, y + 1], content, { anchor: "end" });
}

/** Lines of an upright dimension at x, with extension lines that begin at `from`. */
export function uprightDimension(line: Liner, x: number, y1: number, y2: number, from: number | undefined): string {
  const turned: Liner = (points, look) =>
    line(
      points.map(([along, aside]) => [aside, along] as const),
      look,
    );
  return levelDimension(turned, y1, y2, x, from);
}
