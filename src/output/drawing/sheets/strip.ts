import type { Notch } from "../../../core/light/light.ts";
import { notchMarks } from "../../../core/light/notch-marks.ts";
import type { Pattern, PatternLeaf, PatternLeafBase } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import type { Span } from "../../../core/spans/span.ts";
import type { LengthStyle } from "../../../core/units/length.ts";
import { formatDepth } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { escapeXml } from "../../xml.ts";
import { paperTone } from "../front/tone.ts";
import { lineLook } from "../line-kinds.ts";
import { boxPath, levelPath } from "../path.ts";
import { num, tag, text } from "../svg-text.ts";

/** Width of a strip, mm. */
export const STRIP = 6.9;

/** The tab that carries the leaf's name and hooks over the edge it is measured from, mm. */
export const TAB = 12;

/** Room for the sheet's heading and its instruction, mm. */
export const TITLE = 9.5;

/** Fields lower than this carry their level at the foot, clear of the cut depth above; the lowest carry none. */
const LOW_FIELD = 9;
const LEAST_LABELLED = 5.6;

/** The least letters, mm: 7 pt. */
export const SMALL = 2.5;

/** What the words of a sheet of strips are like where they say nothing else. */
export const USUAL_WORDS = { "font-size": SMALL, "text-anchor": "end" } as const;

/** Words too wide for a strip are set narrower, not lower. */
const NARROWER = { textLength: STRIP - 0.8, lengthAdjust: "spacingAndGlyphs" };

/** Width of figures with a fraction as a share of their height: digits are half as wide, the signs between them less. */
const FIGURE = 0.43;

/** A stretch of the leaf that one sheet shows, mm from the head. */
export interface StripPart {
  readonly from: number;
  readonly to: number;
}

/** One leaf's strip with its left side at x: tab with the leaf's pages, a field for each span, marks with their cuts, the notch. */
export function strip(leaf: PatternLeaf, x: number, part: StripPart, pattern: Pattern, style: LengthStyle): string {
  const top = TITLE + TAB - part.from;
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf.leaf);
  const marks = notch && notchMarks(notch, style.step);
  const edges = marks ? [marks.from, marks.to] : [];
  /** Words stand below their mark, or above it where a notch's edge or the strip's foot would run through them. */
  const foot = (at: number): number =>
    at + 3 > part.to || edges.some((edge) => edge > at && edge < at + 3) ? at - 0.6 : at + 2.5;
  const cuts = leaf.cuts.filter((cut) => cut.at >= part.from && cut.at <= part.to);
  return [
    fields(
      leaf.spans.filter((span) => span.to > part.from && span.from < part.to),
      x,
      top,
      part,
      pattern,
    ),
    outline(x, part),
    names(leaf, x + STRIP / 2),
    stripMarks(
      x,
      cuts.map(({ at, depth }) => ({
        words: `›${formatDepth(benchCutDepth(pattern, depth), style.units)}`,
        y: top + at,
        foot: top + foot(at),
      })),
    ),
    notch ? notchField(notch, x, part, top, style) : "",
  ].join("");
}

/** Words below each other at x: what is alike of them is said once. */
function column(x: number, look: Readonly<Record<string, string | number>>, words: readonly string[]): string {
  return words.length === 0 ? "" : tag("g", { transform: `translate(${num(x)} 0)`, ...look }, words.join(""));
}

/** A word of a column, with its baseline at y. */
function word(y: number, words: string, look: Readonly<Record<string, string | number>> = {}): string {
  return tag("text", { y, ...look }, escapeXml(words));
}

function fields(spans: readonly Span[], x: number, top: number, part: StripPart, { levels }: Pattern): string {
  const drawn: string[] = [];
  const numbers: string[] = [];
  for (const span of spans) {
    const from = Math.max(span.from, part.from);
    const to = Math.min(span.to, part.to);
    const room = to - from;
    drawn.push(tag("path", { d: boxPath(x, top + from, STRIP, room), fill: stripTone(span.level, levels.length) }));
    const level = String(span.level);
    if (room >= LOW_FIELD) numbers.push(word(top + (from + to) / 2 + 1.1, level));
    else if (room >= LEAST_LABELLED) numbers.push(word(top + to - 0.7, level, { "font-size": 2.8 }));
  }
  return drawn.join("") + column(x + 1, { "font-size": 3.2, "font-weight": 600, "text-anchor": "start" }, numbers);
}

/** Pale enough to read on and to spare ink; the number in the field says the level too. */
function stripTone(level: number, levels: number): string {
  return paperTone(((level - 1) / Math.max(1, levels - 1)) * 0.4, 1.01);
}

/** The strip to cut out, and the line at which its tab is folded. */
export function outline(x: number, part: StripPart): string {
  return [
    tag("path", {
      d: boxPath(x, TITLE, STRIP, TAB + part.to - part.from),
      stroke: "#000",
      "stroke-width": 0.13,
      fill: "none",
    }),
    tag("path", {
      d: levelPath([x, TITLE + TAB], STRIP),
      ...lineLook(part.from === 0 ? "score" : "edge"),
    }),
  ].join("");
}

/** Leaf, book page and pattern page on the tab. */
export function names({ leaf, bookPage, patternPage }: PatternLeafBase, middle: number): string {
  const page = bookPage === null ? say.drawStripNoPage() : say.leafPage({ page: bookPage });
  return column(middle, { "text-anchor": "middle" }, [
    word(TITLE + 3.7, String(leaf), { "font-size": 3.4, "font-weight": 700 }),
    word(TITLE + 7.3, page),
    word(TITLE + 10.6, `(${patternPage})`),
  ]);
}

/** A mark at `y`, with words whose baseline is at `foot`. */
interface StripMark {
  readonly words: string;
  readonly y: number;
  readonly foot: number;
}

/** Marks over the strip's width. */
export function stripMarks(x: number, all: readonly StripMark[]): string {
  const d = all.map(({ y }) => levelPath([x, y], STRIP, 3)).join("");
  const said = all
    .filter(({ words }) => words !== "")
    .map(({ words, foot }) => word(foot, words, words.length * FIGURE * SMALL > STRIP - 0.8 ? NARROWER : {}));
  return tag("path", { d, stroke: "#000", "stroke-width": 0.25, fill: "none" }) + column(x + STRIP - 0.4, {}, said);
}

/** The notch as a field bounded by dash-dot lines along the strip's right side, with its depth. */
function notchField(notch: Notch, x: number, part: StripPart, top: number, style: LengthStyle): string {
  const marks = notchMarks(notch, style.step);
  const from = Math.max(marks.from, part.from);
  const to = Math.min(marks.to, part.to);
  if (to <= from) return "";
  return [
    // Above the fields, as what says a stroke is.
    tag("path", { d: boxPath(x + STRIP - 1.6, top + from, 1.6, to - from), "fill-opacity": 0.12, stroke: "none" }),
    tag("path", {
      d: levelPath([x, top + from], STRIP, 3) + levelPath([x, top + to], STRIP, 3),
      ...lineLook("position"),
    }),
    text(0, 0, say.drawStripNotch({ depth: formatDepth(marks.depth, style.units) }), {
      transform: `translate(${num(x + STRIP - 2.2)} ${num(top + (from + to) / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    }),
  ].join("");
}
