import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import { stepFor } from "../../../core/units/length.ts";
import { formatDepth, formatLength, formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { shortName } from "../../../words/short-name.ts";
import type { Figure } from "../figure.ts";
import { wordsWidth } from "../words-width.ts";
import { edgeName } from "./edge-name.ts";
import { type Boundary, depthOf, exampleBoundary, exampleLeaf, levelTint } from "./example-leaf.ts";
import { CUT, diagram, FOLDED, NO_LINE, PAPER, SCORE, TEXT, THIN, torn } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

const EDGE = 72;
const TORN = 3;
const TOP = 13;
const MIDDLE = 27;
const FOOT = 41;

/** A cut between two spans of the example leaf: it reaches the deeper of the two. Undefined where no leaf has a cut. */
export function cutDepth(kit: Kit, pattern: Pattern): Figure | undefined {
  const stepped = pattern.fit.foldStyle === "stepped";
  const boundary = exampleBoundary(pattern, exampleLeaf(pattern), stepped ? "without" : "either");
  if (!boundary) return undefined;
  const size = (mm: number): string => formatSize(mm, kit.units);
  const [a, b] = [depthOf(pattern, boundary.upper), depthOf(pattern, boundary.lower)];
  const deeper = Math.max(a, b);
  const mark = markOf(kit, boundary);
  const pen = penFor(kit.book.direction);
  const origin = stepped ? depthOf(pattern, 1) : 0;
  const scale = Math.min(1.3, 52 / (deeper - origin));
  const x = (depth: number): number => EDGE - (depth - origin) * scale;
  return diagram(57.5, labelOf(kit, pattern, boundary), [
    piece(pen, pattern, boundary, x, origin),
    ...depthDimensions(pen, { a, b, origin, x, size }),
    pen.segment(EDGE, MIDDLE, x(deeper), MIDDLE, CUT),
    cutWords(pen, x(deeper), a > origin && a < b, say.drawCut({ depth: size(benchCutDepth(pattern, deeper)) })),
    pen.words([79, 4], say.drawCutMark({ mark }), { anchor: "end" }),
    pen.leader([
      [EDGE + 3.6, 5],
      [EDGE + 3.6, MIDDLE - 5],
      [EDGE + 0.2, MIDDLE],
    ]),
    pen.upright([EDGE + 4.4, MIDDLE + 8], edgeName(pattern)),
    penFor("ltr").words([40, 55.5], ruleOf(kit, pattern, a, b), { anchor: "middle", bold: true }),
  ]);
}

function markOf(kit: Kit, { at }: Boundary): string {
  return formatLength(at, { units: kit.units, step: stepFor(kit.units, kit.fit.markStep) });
}

/** How the cut's depth follows from the depths of the two spans. */
function ruleOf({ units }: Kit, pattern: Pattern, a: number, b: number): string {
  const plain = (mm: number): string => formatDepth(mm, units);
  const deeper = Math.max(a, b);
  const cut = formatSize(benchCutDepth(pattern, deeper), units);
  return pattern.fit.foldStyle === "stepped"
    ? say.drawCutRuleStepped({ depth: plain(deeper), front: plain(depthOf(pattern, 1)), cut })
    : say.drawCutRuleSingle({ upper: plain(a), lower: plain(b), cut });
}

function labelOf(kit: Kit, pattern: Pattern, boundary: Boundary): string {
  const size = (mm: number): string => formatSize(mm, kit.units);
  const { upper, lower } = boundary;
  const [a, b] = [depthOf(pattern, upper), depthOf(pattern, lower)];
  const figures = {
    leaf: exampleLeaf(pattern).leaf,
    mark: markOf(kit, boundary),
    upper,
    upperDepth: size(a),
    lower,
    lowerDepth: size(b),
    cut: size(benchCutDepth(pattern, Math.max(a, b))),
  };
  return pattern.fit.foldStyle === "stepped"
    ? say.drawCutDepthStepped({ ...figures, front: size(depthOf(pattern, 1)) })
    : say.drawCutDepthSingle(figures);
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
    pen.segment(EDGE, TOP, EDGE, FOOT, stepped ? FOLDED : THIN),
    ...spans.map(
      ({ from, to, level }) =>
        pen.badge([TORN + 5, (from + to) / 2], String(level)) +
        pen.words([TORN + 8.4, (from + to) / 2 + 1], shortName(pattern.levels[level - 1]!.name)),
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

/** Words above the cut, or `below` it where the upper span's line runs there; past its end where they are longer than it. */
function cutWords(pen: Pen, end: number, below: boolean, words: string): string {
  return wordsWidth(words, TEXT) < EDGE - end - 2
    ? pen.words([(EDGE + end) / 2, MIDDLE + (below ? 3.4 : -1.2)], words, { anchor: "middle", bold: true })
    : pen.words([end - 1.4, MIDDLE + 1], words, { anchor: "end", bold: true });
}
