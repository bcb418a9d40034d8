import type { Kit } from "../../../core/kit/kit.ts";
import type { Notch } from "../../../core/light/light.ts";
import type { Pattern, PatternLeaf } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import { formatDepth, formatNumber } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { placeLabels } from "../label-places.ts";
import { edgeName } from "./edge-name.ts";
import { depthOf, exampleLeaf, levelTint } from "./example-leaf.ts";
import { CUT, diagram, FAINT, FOLDED, NO_LINE, PAPER, POSITION, SCORE, THIN } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";
import { leafText, leafTitle, markStyle, notchLines } from "./whole-leaf-text.ts";

const GUTTER = 12;
const EDGE = 50;
const TOP = 14;
const MOST_HEIGHT = 84;
const APART = 3.7;

/** Where things of the leaf stand: depth from the unfolded fore-edge and height from the head, mm. */
interface LeafPlace {
  readonly x: (depth: number) => number;
  readonly y: (height: number) => number;
}

/** The leaf with most cuts, whole, as it lies when it is marked: spans with their levels, marks and cuts, and its notch. */
export function wholeLeaf(kit: Kit, pattern: Pattern): Figure {
  const leaf = exampleLeaf(pattern);
  const { book } = pattern;
  const origin = pattern.fit.foldStyle === "stepped" ? depthOf(pattern, 1) : 0;
  const scale = Math.min(MOST_HEIGHT / book.leafHeight, (EDGE - GUTTER) / (book.leafWidth - origin));
  const place: LeafPlace = { x: (depth) => EDGE - (depth - origin) * scale, y: (height) => TOP + height * scale };
  const foot = place.y(book.leafHeight);
  const gutter = place.x(book.leafWidth);
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf.leaf);
  const words = penFor("ltr");
  const pen = penFor(book.direction);
  const middle = { anchor: "middle" } as const;
  return diagram(foot + (notch ? 16 : 7), leafText(kit, pattern, leaf, notch), [
    words.words([40, 4], leafTitle(leaf), { anchor: "middle", bold: true, size: 3.3 }),
    body(pen, pattern, leaf, place),
    notch ? notchShape(pen, notch, place, origin) : "",
    cutsOf(pen, leaf, place),
    markWords(pen, kit, pattern, leaf, place),
    levelWords(pen, pattern, leaf, place),
    pen.words([(gutter + EDGE) / 2, TOP - 1.2], say.drawHead(), middle),
    pen.words([gutter, foot + 3.6], say.drawGutter()),
    pen.words([gutter + 0.45 * (EDGE - gutter), foot + 3.6], say.drawTail(), middle),
    pen.words([EDGE + 5, foot + 3.6], edgeName(pattern), { anchor: "end" }),
    ...(notch ? notchLines(notch, kit).map((line, i) => words.words([40, foot + 9.6 + i * 4], line, middle)) : []),
  ]);
}

/** Paper to the edge it has when it is marked, tinted to each span's line. */
function body(pen: Pen, pattern: Pattern, leaf: PatternLeaf, { x, y }: LeafPlace): string {
  const { book, fit } = pattern;
  const head = y(0);
  const foot = y(book.leafHeight);
  const gutter = x(book.leafWidth);
  return [
    pen.box([gutter, head], [EDGE, foot], PAPER, NO_LINE),
    ...leaf.spans.map((span) => {
      const line = x(depthOf(pattern, span.level));
      return (
        pen.box([line, y(span.from)], [EDGE, y(span.to)], levelTint(pattern, span.level), NO_LINE) +
        (line < EDGE ? pen.segment(line, y(span.from), line, y(span.to), SCORE) : "")
      );
    }),
    pen.line(
      [
        [EDGE, head],
        [gutter, head],
        [gutter, foot],
        [EDGE, foot],
      ],
      THIN,
    ),
    pen.segment(EDGE, head, EDGE, foot, fit.foldStyle === "stepped" ? FOLDED : THIN),
  ].join("");
}

function cutsOf(pen: Pen, leaf: PatternLeaf, { x, y }: LeafPlace): string {
  return leaf.cuts.map((cut) => pen.segment(EDGE, y(cut.at), x(cut.depth), y(cut.at), CUT)).join("");
}

/** `mark › cut` at the fore-edge, as in the table. */
function markWords(pen: Pen, kit: Kit, pattern: Pattern, leaf: PatternLeaf, { y }: LeafPlace): string {
  const places = placeLabels(
    leaf.cuts.map((cut) => y(cut.at)),
    APART,
    y(0) + 1,
    y(pattern.book.leafHeight) - 1,
  );
  return [
    pen.words([EDGE + 6, 9], say.drawLeafMarkCut(), { bold: true }),
    ...leaf.cuts.map((cut, i) => {
      const at = formatNumber(cut.at, markStyle(kit));
      const depth = formatDepth(benchCutDepth(pattern, cut.depth), kit.units);
      const leader = pen.line(
        [
          [EDGE + 0.8, y(cut.at)],
          [EDGE + 2, y(cut.at)],
          [EDGE + 4.6, places[i]!],
          [EDGE + 5.4, places[i]!],
        ],
        THIN,
      );
      return leader + pen.words([EDGE + 6, places[i]! + 1.05], `${at} › ${depth}`);
    }),
  ].join("");
}

/** Level numbers at the gutter, head to tail, as in the table's folds. */
function levelWords(pen: Pen, pattern: Pattern, leaf: PatternLeaf, { x, y }: LeafPlace): string {
  const gutter = x(pattern.book.leafWidth);
  const middles = leaf.spans.map((span) => y((span.from + span.to) / 2));
  const places = placeLabels(middles, APART, y(0) + 1, y(pattern.book.leafHeight) - 1);
  return [
    pen.words([gutter - 9.6, 9], say.drawLeafFold(), { bold: true }),
    ...leaf.spans.map(
      (span, i) =>
        pen.line(
          [
            [gutter - 5, places[i]!],
            [gutter - 3.6, places[i]!],
            [gutter - 1, middles[i]!],
            [x(depthOf(pattern, span.level)) - 0.6, middles[i]!],
          ],
          FAINT,
        ) + pen.words([gutter - 7, places[i]! + 1.05], String(span.level), { anchor: "middle", bold: true }),
    ),
  ].join("");
}

function notchShape(pen: Pen, notch: Notch, { x, y }: LeafPlace, origin: number): string {
  const inner = x(Math.max(notch.depth, origin));
  return pen.line(
    [
      [EDGE, y(notch.from)],
      [inner, y(notch.from)],
      [inner, y(notch.to)],
      [EDGE, y(notch.to)],
    ],
    POSITION,
  );
}
