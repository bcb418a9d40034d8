import type { Book } from "../../book/book.ts";
import { lineLook } from "../line-kinds.ts";
import type { Figure } from "../pocket-figure.ts";
import { escapeXml, num, tag, text } from "../svg-text.ts";

/** Width of every diagram. It is printed this many millimetres wide, so that its units are printed millimetres. */
export const WIDTH = 80;

/** Height of letters: the usual one, and the least. */
export const TEXT = 3;
export const SMALL = 2.7;

/** A letter's width as a share of its height, on the wide side. */
const LETTER = 0.5;

export type At = readonly [x: number, y: number];
export type Look = Readonly<Record<string, string>>;
type Anchor = "start" | "middle" | "end";

/** Small figures draw the line kinds a little wider than true-scale sheets do. */
const WIDER = 1.4;
export const CUT: Look = lineLook("cut", WIDER);
export const SCORE: Look = lineLook("score", WIDER);
export const POSITION: Look = lineLook("position", WIDER);
export const THIN: Look = { fill: "none", stroke: "#000", "stroke-width": "0.2" };
export const SOFT_LINE: Look = { fill: "none", stroke: "#767676", "stroke-width": "0.25" };
/** A folded edge, and a leaf seen edge-on. */
export const FOLDED: Look = { fill: "none", stroke: "#000", "stroke-width": "0.9", "stroke-linecap": "round" };
export const EDGE_ON: Look = { fill: "none", stroke: "#000", "stroke-width": "0.55", "stroke-linecap": "round" };
export const NEXT_EDGE_ON: Look = { ...EDGE_ON, stroke: "#767676" };
export const NOTHING: Look = { stroke: "none" };

export const PAPER = "#fdf7e8";
export const CARD = "#f1e8d5";
export const BOARD = "#b9b09c";
export const GLUE = "#e5a84f";

/** A finished diagram of a height, with what it shows in words. */
export function diagram(height: number, label: string, parts: readonly string[]): Figure {
  const svg = `<svg class="figure diagram" viewBox="0 0 ${WIDTH} ${num(height)}" role="img" aria-label="${escapeXml(label)}">${parts.join("")}</svg>`;
  return { label, svg };
}

/** About how wide words are drawn. */
export function wordsWidth(words: string, size = TEXT): number {
  return words.length * LETTER * size;
}

export interface WordsStyle {
  readonly anchor?: Anchor;
  readonly size?: number;
  readonly bold?: boolean;
}

/** Where a pen draws: `left` and `top` of its field, and the field's width, in which right-to-left books are mirrored. */
export interface Field {
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

/** Draws in a field as for a left-to-right book, gutter at the left of a recto; for a right-to-left book all of it is mirrored, words stay readable. */
export interface Pen {
  readonly place: (at: At) => At;
  readonly line: (points: readonly At[], look: Look) => string;
  readonly shape: (points: readonly At[], fill: string, look?: Look) => string;
  readonly box: (from: At, to: At, fill: string, look?: Look) => string;
  readonly words: (at: At, words: string, style?: WordsStyle) => string;
  /** Words that run upward; `at` is their middle. */
  readonly upright: (at: At, words: string, style?: WordsStyle) => string;
  /** A level dimension at `y`; `from` is where its extension lines begin. Words too wide for it go to its `outside`. */
  readonly across: (x1: number, x2: number, y: number, words: string, rest?: { from?: number; outside?: Side }) => string;
  /** An upright dimension at `x`, words upright beside it on the side of the thing measured. */
  readonly down: (x: number, y1: number, y2: number, words: string, rest?: { from?: number; side?: Side }) => string;
  /** A movement: along two points, or bent toward the middle one of three. */
  readonly arrow: (points: readonly [At, At] | readonly [At, At, At]) => string;
  /** A thin line from words to the thing they name, ending in a dot. */
  readonly leader: (points: readonly At[]) => string;
  /** A number in a ring. */
  readonly badge: (at: At, words: string) => string;
  readonly dot: (at: At, radius: number, fill: string) => string;
}

type Side = "left" | "right";

const EVERYWHERE: Field = { left: 0, top: 0, width: WIDTH };
const TICK = 1;
const GAP = 0.7;

export function penFor(direction: Book["direction"], field: Field = EVERYWHERE): Pen {
  const flip = direction === "rtl";
  const place = ([x, y]: At): At => [field.left + (flip ? field.width - x : x), field.top + y];
  const sideOf = (side: Side): Side => (flip ? (side === "left" ? "right" : "left") : side);
  const d = (points: readonly At[]): string => pathOf(points.map(place));
  const line = (points: readonly At[], look: Look): string => tag("path", { d: d(points), ...look });
  const words = ([x, y]: At, content: string, style: WordsStyle = {}): string => {
    const [px, py] = place([x, y]);
    return text(px, py, content, { ...letters(style), "text-anchor": anchorOf(style.anchor ?? "start", flip), fill: "#000" });
  };
  const upright = (at: At, content: string, style: WordsStyle = {}): string => uprightText(place(at), content, style);
  return {
    place,
    line,
    words,
    upright,
    shape: (points, fill, look = CUT) => tag("path", { d: `${d(points)}Z`, ...look, fill }),
    box: ([x1, y1], [x2, y2], fill, look = CUT) =>
      tag("path", { d: `${d([[x1, y1], [x2, y1], [x2, y2], [x1, y2]])}Z`, ...look, fill }),
    across: (x1, x2, y, content, { from, outside = "right" } = {}) => {
      const inside = wordsWidth(content) <= Math.abs(x2 - x1) - 0.6;
      const beside: At = outside === "right" ? [Math.max(x1, x2) + 1.4, y + 1] : [Math.min(x1, x2) - 1.4, y + 1];
      return (
        line([[x1, y], [x2, y]], THIN) +
        [x1, x2].map((x) => line([[x, y - TICK], [x, y + TICK]], THIN) + extension([x, from], [x, y], line)).join("") +
        (inside
          ? words([(x1 + x2) / 2, y - 0.8], content, { anchor: "middle" })
          : words(beside, content, { anchor: outside === "right" ? "start" : "end" }))
      );
    },
    down: (x, y1, y2, content, { from, side = "left" } = {}) =>
      line([[x, y1], [x, y2]], THIN) +
      [y1, y2].map((y) => line([[x - TICK, y], [x + TICK, y]], THIN) + extension([from, y], [x, y], line)).join("") +
      upright([x + (side === "left" ? -1 : 1) * 2.1, (y1 + y2) / 2], content),
    arrow: (points) => arrowOf(points.map(place)),
    leader: (points) => line(points, THIN) + tag("circle", { cx: place(points.at(-1)!)[0], cy: place(points.at(-1)!)[1], r: 0.45 }),
    badge: (at, content) => badgeOf(place(at), content),
    dot: (at, radius, fill) => tag("circle", { cx: place(at)[0], cy: place(at)[1], r: radius, ...THIN, fill }),
  };
}
