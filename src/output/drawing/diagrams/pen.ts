import type { Book } from "../../../core/book/book.ts";
import { num, tag, text } from "../svg-text.ts";
import { type At, CUT, type Look, TEXT, THIN, WIDTH, wordsWidth } from "./ink.ts";

export interface WordsStyle {
  readonly anchor?: "start" | "middle" | "end";
  readonly size?: number;
  readonly bold?: boolean;
}

type Side = "left" | "right";

/** Where a pen draws: `left` and `top` of its field, and the field's width, in which right-to-left books are mirrored. */
export interface Field {
  readonly left: number;
  readonly top: number;
  readonly width: number;
}

/** Draws in a field as for a left-to-right book, gutter at the left of a recto; for a right-to-left book all is mirrored but the letters. */
export interface Pen {
  /** Where a place of the field is in the drawing. */
  readonly place: (at: At) => At;
  readonly line: (points: readonly At[], look: Look) => string;
  readonly segment: (x1: number, y1: number, x2: number, y2: number, look: Look) => string;
  readonly shape: (points: readonly At[], fill: string, look?: Look) => string;
  readonly box: (from: At, to: At, fill: string, look?: Look) => string;
  readonly words: (at: At, words: string, style?: WordsStyle) => string;
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
  /** A number in a ring. */
  readonly badge: (at: At, words: string) => string;
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

const EVERYWHERE: Field = { left: 0, top: 0, width: WIDTH };
const TICK = 1;
const GAP = 0.7;
const BEYOND = 1;

export function penFor(direction: Book["direction"], field: Field = EVERYWHERE): Pen {
  const flip = direction === "rtl";
  const place = ([x, y]: At): At => [field.left + (flip ? field.width - x : x), field.top + y];
  const line = (points: readonly At[], look: Look): string => tag("path", { d: pathOf(points.map(place)), ...look });
  const shape = (points: readonly At[], fill: string, look: Look = CUT): string =>
    tag("path", { d: `${pathOf(points.map(place))}Z`, ...look, fill });
  const words = (at: At, content: string, style: WordsStyle = {}): string =>
    levelWords(place(at), content, style, flip);
  const upright = (at: At, content: string, style: WordsStyle = {}): string => uprightWords(place(at), content, style);
  const dot = (at: At, radius: number, fill: string): string => {
    const [cx, cy] = place(at);
    return tag("circle", { cx, cy, r: radius, ...THIN, fill });
  };
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
    shape,
    words,
    upright,
    dot,
    box: ([x1, y1], [x2, y2], fill, look) => shape(corners(x1, y1, x2, y2), fill, look),
    across: (x1, x2, y, content, style = {}) =>
      acrossLines(line, x1, x2, y, style.from) + acrossWords(words, x1, x2, y, content, style.outside),
    down: (x, y1, y2, content, { from, side = "left" } = {}) =>
      downLines(line, x, y1, y2, from) + upright([x + (side === "left" ? -2 : 2), (y1 + y2) / 2], content),
    arrow: (x1, y1, x2, y2, over) =>
      arrowOf([[x1, y1] as const, ...(over ? [over] : []), [x2, y2] as const].map(place)),
    leader: (points) => line(points, THIN) + dot(points.at(-1)!, 0.45, "#000"),
    badge: (at, content) =>
      dot(at, 2.1, "#fff") + words([at[0], at[1] + 1.05], content, { anchor: "middle", bold: true }),
  };
}

type Liner = Pen["line"];

function acrossLines(line: Liner, x1: number, x2: number, y: number, from: number | undefined): string {
  const ends = [x1, x2].map((x) =>
    line(
      [
        [x, y - TICK],
        [x, y + TICK],
      ],
      THIN,
    ),
  );
  const side = Math.sign(y - (from ?? y));
  const extensions =
    from === undefined
      ? []
      : [x1, x2].map((x) =>
          line(
            [
              [x, from + side * GAP],
              [x, y + side * BEYOND],
            ],
            THIN,
          ),
        );
  return [
    line(
      [
        [x1, y],
        [x2, y],
      ],
      THIN,
    ),
    ...ends,
    ...extensions,
  ].join("");
}

function acrossWords(
  words: Pen["words"],
  x1: number,
  x2: number,
  y: number,
  content: string,
  outside: Side = "right",
): string {
  if (wordsWidth(content) <= Math.abs(x2 - x1) - 0.6)
    return words([(x1 + x2) / 2, y - 0.8], content, { anchor: "middle" });
  return outside === "right"
    ? words([Math.max(x1, x2) + 1.6, y + 1], content)
    : words([Math.min(x1, x2) - 1.6, y + 1], content, { anchor: "end" });
}

function downLines(line: Liner, x: number, y1: number, y2: number, from: number | undefined): string {
  const ends = [y1, y2].map((y) =>
    line(
      [
        [x - TICK, y],
        [x + TICK, y],
      ],
      THIN,
    ),
  );
  const side = Math.sign(x - (from ?? x));
  const extensions =
    from === undefined
      ? []
      : [y1, y2].map((y) =>
          line(
            [
              [from + side * GAP, y],
              [x + side * BEYOND, y],
            ],
            THIN,
          ),
        );
  return [
    line(
      [
        [x, y1],
        [x, y2],
      ],
      THIN,
    ),
    ...ends,
    ...extensions,
  ].join("");
}

function levelWords([x, y]: At, content: string, style: WordsStyle, flip: boolean): string {
  const { anchor = "start" } = style;
  const turned = { start: "end", middle: "middle", end: "start" } as const;
  return text(x, y, content, { ...letters(style), "text-anchor": flip ? turned[anchor] : anchor });
}

function uprightWords([x, y]: At, content: string, style: WordsStyle): string {
  const { size = TEXT, anchor = "middle" } = style;
  return text(0, 0, content, {
    ...letters(style),
    "text-anchor": anchor,
    transform: `translate(${num(x + 0.35 * size)} ${num(y)}) rotate(-90)`,
  });
}

function letters({ size = TEXT, bold = false }: WordsStyle): Record<string, string | number | undefined> {
  return { "font-size": size, "font-weight": bold ? 700 : undefined, fill: "#000" };
}

const HEAD_LENGTH = 2.4;
const HEAD_HALF = 0.95;

/** The line stops inside the head, so that the point stays sharp. */
function arrowOf(points: readonly At[]): string {
  const [tip, before] = [points.at(-1)!, points.at(-2)!];
  const length = Math.hypot(tip[0] - before[0], tip[1] - before[1]);
  const [ux, uy] = [(tip[0] - before[0]) / length, (tip[1] - before[1]) / length];
  const along = (back: number, aside: number): At => [tip[0] - back * ux - aside * uy, tip[1] - back * uy + aside * ux];
  const start = points[0]!;
  const end = along(HEAD_LENGTH * 0.8, 0);
  const shaft = points.length === 2 ? pathOf([start, end]) : `${pathOf([start])}Q${pair(points[1]!)} ${pair(end)}`;
  const head = pathOf([tip, along(HEAD_LENGTH, HEAD_HALF), along(HEAD_LENGTH, -HEAD_HALF)]);
  return (
    tag("path", { d: shaft, fill: "none", stroke: "#000", "stroke-width": "0.4" }) +
    tag("path", { d: `${head}Z`, fill: "#000" })
  );
}

function corners(x1: number, y1: number, x2: number, y2: number): At[] {
  return [
    [x1, y1],
    [x2, y1],
    [x2, y2],
    [x1, y2],
  ];
}

function pathOf(points: readonly At[]): string {
  return `M${points.map(pair).join("L")}`;
}

function pair([x, y]: At): string {
  return `${num(x)} ${num(y)}`;
}
