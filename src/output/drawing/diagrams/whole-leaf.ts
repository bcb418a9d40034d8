import { describeLeaf } from "../../../core/book/numbering.ts";
import type { Kit } from "../../../core/kit/kit.ts";
import type { Notch } from "../../../core/light/light.ts";
import type { Pattern, PatternLeaf } from "../../../core/pattern/pattern.ts";
import { benchCutDepth, cutEdge } from "../../../core/plan/bench.ts";
import { stepFor } from "../../../core/units/length.ts";
import { formatDepth, formatNumber } from "../../../words/lengths.ts";
import type { Figure } from "../pocket-figure.ts";
import { depthOf, exampleLeaf, levelTint } from "./example-leaf.ts";
import { CUT, diagram, FAINT, FOLDED, NO_LINE, PAPER, POSITION, SCORE, THIN } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";
import { spreadOut } from "./spread.ts";

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
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf.leaf);
  const words = penFor("ltr");
  const pen = penFor(book.direction);
  const notchWords = notch ? notchLines(notch, kit) : [];
  return diagram(foot + (notch ? 16 : 7), labelOf(kit, pattern, leaf, notchWords.join(", ")), [
    words.words([40, 4], titleOf(leaf), { anchor: "middle", bold: true, size: 3.3 }),
    body(pen, pattern, leaf, place),
    notch ? notchShape(pen, notch, place, origin) : "",
    cutsOf(pen, leaf, place),
    markWords(pen, kit, pattern, leaf, place),
    levelWords(pen, pattern, leaf, place),
    pen.words([(place.x(book.leafWidth) + EDGE) / 2, TOP - 1.2], "head", { anchor: "middle" }),
    pen.words([place.x(book.leafWidth), foot + 3.6], "gutter"),
    pen.words([place.x(book.leafWidth) + 0.45 * (EDGE - place.x(book.leafWidth)), foot + 3.6], "tail", {
      anchor: "middle",
    }),
    pen.words([EDGE + 5, foot + 3.6], cutEdge(pattern), { anchor: "end" }),
    ...notchWords.map((line, i) => words.words([40, foot + 9.6 + i * 4], line, { anchor: "middle" })),
  ]);
}

function titleOf(leaf: PatternLeaf): string {
  const page = leaf.bookPage === null ? describeLeaf(leaf.name) : `p. ${describeLeaf(leaf.name)}`;
  return `Leaf ${leaf.leaf}, ${page}, pattern page ${leaf.patternPage}`;
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
      CUT,
    ),
    pen.segment(EDGE, head, EDGE, foot, fit.foldStyle === "stepped" ? FOLDED : CUT),
  ].join("");
}

function cutsOf(pen: Pen, leaf: PatternLeaf, { x, y }: LeafPlace): string {
  return leaf.cuts.map((cut) => pen.segment(EDGE, y(cut.at), x(cut.depth), y(cut.at), CUT)).join("");
}

/** `mark › cut` at the fore-edge, as in the table. */
function markWords(pen: Pen, kit: Kit, pattern: Pattern, leaf: PatternLeaf, { y }: LeafPlace): string {
  const places = spreadOut(
    leaf.cuts.map((cut) => y(cut.at)),
    APART,
    y(0) + 1,
    y(pattern.book.leafHeight) - 1,
  );
  return [
    pen.words([EDGE + 6, 9], "mark › cut", { bold: true }),
    ...leaf.cuts.map((cut, i) => {
      const at = formatNumber(cut.at, { units: kit.units, step: stepFor(kit.units, kit.fit.markStep) });
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
  const places = spreadOut(middles, APART, y(0) + 1, y(pattern.book.leafHeight) - 1);
  return [
    pen.words([gutter - 9.6, 9], "fold at level", { bold: true }),
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

/** Rounded outward to the step, as the table does. */
function notchLines(notch: Notch, { units, fit }: Kit): string[] {
  const style = { units, step: stepFor(units, fit.markStep) };
  const down = formatNumber(Math.floor(notch.from / style.step + 1e-6) * style.step, style);
  const up = (mm: number): string => formatNumber(Math.ceil(mm / style.step - 1e-6) * style.step, style);
  return [`notch for the light: ${down} to ${up(notch.to)}`, `${up(notch.depth)} deep from the unfolded fore-edge`];
}

function labelOf(kit: Kit, pattern: Pattern, leaf: PatternLeaf, notch: string): string {
  const at = (mm: number): string => formatNumber(mm, { units: kit.units, step: stepFor(kit.units, kit.fit.markStep) });
  const spans = leaf.spans.map((span) => `${at(span.from)} to ${at(span.to)} at level ${span.level}`).join(", ");
  const cuts = leaf.cuts
    .map((cut) => `${at(cut.at)} cut ${formatDepth(benchCutDepth(pattern, cut.depth), kit.units)}`)
    .join(", ");
  return `One leaf whole: ${titleOf(leaf)}. Heights from the head in ${kit.units}. Spans: ${spans}. Marks and cuts from the ${cutEdge(pattern)}: ${cuts || "none"}.${notch ? ` A ${notch}.` : ""}`;
}
