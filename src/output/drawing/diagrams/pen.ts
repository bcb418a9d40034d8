import type { Book } from "../../../core/book/book.ts";
import { shortLine, shortRing } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import { arrowAlong } from "./arrow.ts";
import { levelDimension, levelDimensionWords, type Side, uprightDimension } from "./dimension.ts";
import { type At, edgeOn, type Look, THIN, WIDTH } from "./ink.ts";
import { levelWords, uprightWords, type WordsStyle, wrappedWords } from "./pen-words.ts";

/** Where a pen draws: `left` and `top` of its area, and the area's width, in which right-to-left books are mirrored. */
export interface PenArea {
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

/** Draws in an area as for a left-to-right book, gutter at the left of a recto; for a right-to-left book all is mirrored but the letters. */
export interface Pen {
  /** Where a place of the area is in the drawing. */
  readonly place: (at: At) => At;
  readonly line: (points: readonly At[], look: Look) => string;
  readonly segment: (x1: number, y1: number, x2: number, y2: number, look: Look) => string;
  /** A leaf seen edge-on. */
  readonly leaf: (points: readonly At[], next?: boolean) => string;
  readonly shape: (points: readonly At[], fill: string, look?: Look) => string;
  readonly box: (from: At, to: At, fill: string, look?: Look) => string;
  readonly words: (at: At, words: string, style?: WordsStyle) => string;
  /** Words over several lines no wider than `width`; `at` is where the first one stands. */
  readonly wrapped: (at: At, words: string, width: number, style?: WordsStyle) => string;
  /** Words that run upward; `at` is their middle. */
  readonly upright: (at: At, words: string, style?: WordsStyle) => string;
  /** A level dimension at `y`; `from` is where its extension lines begin. Words too wide for it stand at its `outside`. */
  readonly across: (x1: number, x2: number, y: number, words: string, rest?: AcrossStyle) => string;
  /** An upright dimension at `x`; `from` is where its extension lines begin, `side` where its words stand. */
  readonly down: (x: number, y1: number, y2: number, words: string, rest?: DownStyle) => string;
  /** A movement, straight; or bent toward `over` on its way. */
  readonly arrow: (x1: number, y1: number, x2: number, y2: number, over?: At) => string;
  /** A thin line from words to the thing they name, ending in a dot. */
  readonly leader: (points: readonly At[]) => string;
  /** A number in a ring: of a level, a gauge line, a motif. */
  readonly badge: (at: At, words: string) => string;
  /** A number on a black disc: the order of the hands. */
  readonly turn: (at: At, number: number) => string;
  readonly dot: (at: At, radius: number, fill: string) => string;
}

interface AcrossStyle {
  readonly from?: number;
  readonly outside?: Side;
}

interface DownStyle {
  readonly from?: number;
  readonly side?: Side;
}

const EVERYWHERE: PenArea = { left: 0, top: 0, width: WIDTH };

export function penFor(direction: Book["direction"], area: PenArea = EVERYWHERE): Pen {
  const flip = direction === "rtl";
  const place = ([x, y]: At): At => [area.left + (flip ? area.width - x : x), area.top + y];
  const line = (points: readonly At[], look: Look): string =>
    tag("path", { d: shortLine(points.map(place), 1), ...look });
  const shape = (points: readonly At[], fill: string, look: Look = THIN): string =>
    tag("path", { d: shortRing(points.map(place), 1), ...look, fill });
  const words = (at: At, content: string, style: WordsStyle = {}): string =>
    levelWords(place(at), content, style, flip);
  const upright = (at: At, content: string, style: WordsStyle = {}): string => uprightWords(place(at), content, style);
  const dot = (at: At, radius: number, fill: string): string => {
    const [cx, cy] = place(at);
    return tag("circle", { cx, cy, r: radius, ...THIN, fill });
  };
  const inDisc = (at: At, content: string, ground: "#fff" | "#000"): string =>
    dot(at, 2.1, ground) +
    words([at[0], at[1] + 1.05], content, { anchor: "middle", bold: true, light: ground === "#000" });
  return {
    place,
    line,
    segment: (x1, y1, x2, y2, look) =>
      line(
        [
          [x1, y1],
          [x2, y2],
        ],
        look,
      ),
    leaf: (points, next) => edgeOn(shortLine(points.map(place), 1), next),
    shape,
    words,
    wrapped: (at, content, width, style = {}) => wrappedWords(place(at), content, width, style, flip),
    upright,
    dot,
    box: ([x1, y1], [x2, y2], fill, look) =>
      shape(
        [
          [x1, y1],
          [x2, y1],
          [x2, y2],
          [x1, y2],
        ],
        fill,
        look,
      ),
    across: (x1, x2, y, content, style = {}) =>
      levelDimension(line, x1, x2, y, style.from) + levelDimensionWords(words, x1, x2, y, content, style.outside),
    down: (x, y1, y2, content, { from, side = "left" } = {}) =>
      uprightDimension(line, x, y1, y2, from) + upright([x + (side === "left" ? -2 : 2), (y1 + y2) / 2], content),
    arrow: (x1, y1, x2, y2, over) =>
      arrowAlong([[x1, y1] as const, ...(over ? [over] : []), [x2, y2] as const].map(place)),
    leader: (points) => line(points, THIN) + dot(points.at(-1)!, 0.45, "#000"),
    badge: (at, content) => inDisc(at, content, "#fff"),
    turn: (at, number) => inDisc(at, String(number), "#000"),
  };
}
