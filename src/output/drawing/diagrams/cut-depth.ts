import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { benchCutDepth, cutEdge } from "../../../core/plan/bench.ts";
import { stepFor } from "../../../core/units/length.ts";
import { formatDepth, formatLength, formatSize } from "../../../words/lengths.ts";
import type { Figure } from "../pocket-figure.ts";
import { type Boundary, depthOf, exampleBoundary, exampleLeaf, levelTint } from "./example-leaf.ts";
import { CUT, diagram, FOLDED, NO_LINE, PAPER, SCORE, THIN, torn, wordsWidth } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

const EDGE = 72;
const TORN = 3;
const TOP = 13;
const MIDDLE = 27;
const FOOT = 41;

/** A cut between two spans of the example leaf: it reaches the deeper of the two. Undefined where no leaf has a cut. */
export function cutDepth(kit: Kit, pattern: Pattern): Figure | undefined {
  const leaf = exampleLeaf(pattern);
  const stepped = pattern.fit.foldStyle === "stepped";
  const boundary = exampleBoundary(pattern, leaf, stepped ? "without" : "either");
  if (!boundary) return undefined;
  const size = (mm: number): string => formatSize(mm, kit.units);
  const mark = formatLength(boundary.at, { units: kit.units, step: stepFor(kit.units, kit.fit.markStep) });
  const [a, b] = [depthOf(pattern, boundary.upper), depthOf(pattern, boundary.lower)];
  const front = depthOf(pattern, 1);
  const deeper = Math.max(a, b);
  const bench = benchCutDepth(pattern, deeper);
  const plain = (mm: number): string => formatDepth(mm, kit.units);
  const rule = stepped
    ? `cut = ${plain(deeper)} − ${plain(front)} = ${size(bench)}`
    : `cut = the deeper of ${plain(a)} and ${plain(b)}: ${size(bench)}`;
  const sentence = stepped
    ? `The leaf is already folded at ${size(front)}, so the cut starts at the folded edge and is ${plain(deeper)} − ${plain(front)} = ${size(bench)} long.`
    : `The cut starts at the fore-edge and is ${size(bench)} long.`;
  const label = `How deep to cut, on leaf ${leaf.leaf} at the mark ${mark} from the head. Above the mark the leaf is at level ${boundary.upper}, ${size(a)} from the fore-edge; below it at level ${boundary.lower}, ${size(b)}. The cut reaches the deeper of the two. ${sentence}`;
  const pen = penFor(kit.book.direction);
  const words = penFor("ltr");
  const origin = stepped ? front : 0;
  const scale = Math.min(1.3, 52 / (deeper - origin));
  const x = (depth: number): number => EDGE - (depth - origin) * scale;
  return diagram(57.5, label, [
    piece(pen, pattern, boundary, x, origin),
    ...depthDimensions(pen, { a, b, origin, x, size }),
    pen.segment(EDGE, MIDDLE, x(deeper), MIDDLE, { ...CUT, "stroke-width": "0.9" }),
    cutWords(pen, x(deeper), `cut ${size(bench)}`),
    pen.words([79, 4], `mark ${mark} from the head`, { anchor: "end" }),
    pen.leader([
      [EDGE + 3.6, 5],
      [EDGE + 3.6, MIDDLE - 5],
      [EDGE + 0.2, MIDDLE],
    ]),
    pen.upright([EDGE + 4.4, MIDDLE + 8], cutEdge(pattern)),
    words.words([40, 55.5], rule, { anchor: "middle", bold: true }),
  ]);
}

/** The fore-edge piece: tinted to each span's line, the line dashed. */
function piece(pen: Pen, pattern: Pattern, boundary: Boundary, x: (depth: number) => number, origin: number): string {
  const spans = [
    { from: TOP, to: MIDDLE, level: boundary.upper },
    { from: MIDDLE, to: FOOT, level: boundary.lower },
  ];
  const stepped = origin > 0;
  return [
    pen.shape([[EDGE, TOP], [EDGE, FOOT], ...torn(TORN, FOOT, TOP)], PAPER, NO_LINE),
    ...spans.map(({ from, to, level }) => {
      const line = x(depthOf(pattern, level));
      return (
        pen.box([line, from], [EDGE, to], levelTint(pattern, level), NO_LINE) +
        (line < EDGE ? pen.segment(line, from, line, to, SCORE) : "")
      );
    }),
    pen.line([[EDGE, TOP], ...torn(TORN, TOP, FOOT), [EDGE, FOOT]], THIN),
    pen.segment(EDGE, TOP, EDGE, FOOT, stepped ? FOLDED : CUT),
    ...spans.map(
      ({ from, to, level }) =>
        pen.badge([TORN + 5, (from + to) / 2], String(level)) +
        pen.words([TORN + 8.4, (from + to) / 2 + 1], pattern.levels[level - 1]!.name),
    ),
  ].join("");
}

interface Depths {
  readonly a: number;
  readonly b: number;
  readonly origin: number;
  readonly x: (depth: number) => number;
  readonly size: (mm: number) => string;
}

/** The upper span's depth above the piece, the lower one's below it; none where the span stays at the folded edge. */
function depthDimensions(pen: Pen, { a, b, origin, x, size }: Depths): string[] {
  const one = (depth: number, y: number, from: number): string =>
    depth > origin ? pen.across(x(depth), EDGE, y, size(depth - origin), { from, outside: "left" }) : "";
  return [one(a, TOP - 3.4, TOP), one(b, FOOT + 6.6, FOOT)];
}

/** Words above the cut, or past its end where they are longer than it. */
function cutWords(pen: Pen, end: number, words: string): string {
  return wordsWidth(words) < EDGE - end - 2
    ? pen.words([(EDGE + end) / 2, MIDDLE - 1.2], words, { anchor: "middle", bold: true })
    : pen.words([end - 1.4, MIDDLE + 1], words, { anchor: "end", bold: true });
}
