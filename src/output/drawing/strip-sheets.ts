import type { Kit } from "../../core/kit/kit.ts";
import type { Notch } from "../../core/light/light.ts";
import { type Pattern, type PatternLeaf, pictureLeaves } from "../../core/pattern/pattern.ts";
import { benchCutDepth, cutEdge } from "../../core/plan/bench.ts";
import { type LengthStyle, roundTo } from "../../core/units/length.ts";
import { formatDepth, formatLength } from "../../words/lengths.ts";
import { paperTone } from "./front/tone.ts";
import { lineLook } from "./line-kinds.ts";
import { num, tag, text } from "./svg-text.ts";
import { BAR_ROOM, calibration, SHEET } from "./true-scale.ts";

const STRIP = 8;
/** Fields lower than this carry their level at the foot, clear of the cut depth above; the lowest carry none. */
const LOW_FIELD = 9;
const LEAST_LABELLED = 5.6;
/** The tab that carries the leaf's name and hooks over the edge it is measured from, mm. */
const TAB = 12;
/** Room for the sheet's heading and its instruction. */
const TITLE = 9.5;
/** Strip parts overlap by this much where a leaf is higher than the sheet. */
const OVERLAP = 20;

/** A stretch of the leaf that one sheet shows, mm from the head. */
export interface StripPart {
  readonly from: number;
  readonly to: number;
}

/** Marking strips at true scale: the drawing of one sheet, and what it holds. */
export interface StripSheet {
  readonly drawing: string;
  readonly first: PatternLeaf;
  readonly last: PatternLeaf;
  readonly part: StripPart;
  readonly partNumber: number;
  readonly parts: number;
}

/**
 * A strip for each picture leaf, to be laid along its fore-edge with the tab over the head edge. Border leaves are folded
 * whole and need none. Where the marks reach further than the sheet, the strips come in parts that overlap.
 */
export function stripSheets(kit: Kit, pattern: Pattern): StripSheet[] {
  const style: LengthStyle = { units: kit.units, step: kit.fit.markStep };
  const leaves = pictureLeaves(pattern);
  const parts = stripParts(pattern);
  const most = Math.floor((SHEET.width - BAR_ROOM.left - 5) / STRIP);
  const sheets = Math.ceil(leaves.length / most);
  const each = Math.ceil(leaves.length / sheets);
  return parts.flatMap((part, p) =>
    Array.from({ length: sheets }, (_, i) => {
      const chosen = leaves.slice(i * each, (i + 1) * each);
      const strips = chosen.map((leaf, n) => strip(leaf, BAR_ROOM.left + 4 + n * STRIP, part, pattern, style));
      const drawing = heading(style, part, p, cutEdge(pattern)) + strips.join("") + calibration(kit.units);
      return { drawing, first: chosen[0]!, last: chosen.at(-1)!, part, partNumber: p + 1, parts: parts.length };
    }),
  );
}

/** One part where the marks fit on the sheet, otherwise as many as it takes. */
function stripParts(pattern: Pattern): StripPart[] {
  const room = SHEET.height - BAR_ROOM.foot - TITLE - TAB - 1;
  const lastMark = Math.max(0, ...pattern.leaves.flatMap((leaf) => leaf.cuts.map((cut) => cut.at)));
  const end = Math.min(pattern.book.leafHeight, lastMark + 8);
  const parts: StripPart[] = [];
  for (let from = 0; parts.length === 0 || parts.at(-1)!.to < end; from += roundTo(room - OVERLAP, 10)) {
    parts.push({ from, to: Math.min(from + room, end) });
  }
  return parts;
}

function heading(style: LengthStyle, part: StripPart, p: number, edge: string): string {
  const place =
    p === 0
      ? "Cut apart, fold the tab over the head edge, copy the marks."
      : `Lay the top line on your own mark at ${formatLength(part.from, style)} from the head.`;
  const words = `${place} Top: leaf, book page, (pattern page). Fields: level. › cut depth from the ${edge}.`;
  return text(BAR_ROOM.left + 4, 8, words, { "font-size": 2.6 });
}

function strip(leaf: PatternLeaf, x: number, part: StripPart, pattern: Pattern, style: LengthStyle): string {
  const top = TITLE + TAB - part.from;
  const spans = leaf.spans.filter((span) => span.to > part.from && span.from < part.to);
  const fields = spans.map((span) => {
    const from = Math.max(span.from, part.from);
    const to = Math.min(span.to, part.to);
    const room = to - from;
    const low = room < LOW_FIELD ? to - 0.7 : (from + to) / 2 + 1.1;
    const label =
      room >= LEAST_LABELLED
        ? text(x + 1, top + low, String(span.level), { "font-size": room < LOW_FIELD ? 2.8 : 3.2, "font-weight": 600 })
        : "";
    return (
      tag("rect", {
        x,
        y: top + from,
        width: STRIP,
        height: to - from,
        fill: stripTone(span.level, pattern.levels.length),
      }) + label
    );
  });
  const marks = leaf.cuts
    .filter((cut) => cut.at >= part.from && cut.at <= part.to)
    .map((cut) => mark(cut.at, formatDepth(benchCutDepth(pattern, cut.depth), style.units), x, top));
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf.leaf);
  const page = leaf.bookPage === null ? "no p." : `p. ${leaf.bookPage}`;
  return [
    ...fields,
    tag("path", {
      d: `M${num(x)} ${TITLE}h${STRIP}v${num(TAB + part.to - part.from)}h${-STRIP}z`,
      fill: "none",
      stroke: "#000",
      "stroke-width": 0.13,
    }),
    tag("path", {
      d: `M${num(x)} ${TITLE + TAB}h${STRIP}`,
      stroke: "#000",
      "stroke-width": 0.35,
      "stroke-dasharray": part.from === 0 ? "1.4 0.7" : undefined,
    }),
    text(x + STRIP / 2, TITLE + 4, String(leaf.leaf), {
      "font-size": 3.4,
      "font-weight": 700,
      "text-anchor": "middle",
    }),
    text(x + STRIP / 2, TITLE + 8, page, { "font-size": 2.5, "text-anchor": "middle" }),
    text(x + STRIP / 2, TITLE + 11.4, `(${leaf.patternPage})`, { "font-size": 2.5, "text-anchor": "middle" }),
    ...marks,
    ...(notch ? [notchField(notch, x, part, top, style)] : []),
  ].join("");
}

function mark(at: number, cut: string, x: number, top: number): string {
  return (
    tag("path", { d: `M${num(x)} ${num(top + at, 3)}h${STRIP}`, stroke: "#000", "stroke-width": 0.25 }) +
    text(x + STRIP - 0.4, top + at + 2.5, `›${cut}`, { "font-size": 2.4, "text-anchor": "end" })
  );
}

/** The notch as a field bounded by dash-dot lines along the strip's right side, with its depth. */
function notchField(notch: Notch, x: number, part: StripPart, top: number, style: LengthStyle): string {
  const from = Math.max(notch.from, part.from);
  const to = Math.min(notch.to, part.to);
  if (to <= from) return "";
  const look = lineLook("position");
  const words = `notch, ${formatDepth(notch.depth, style.units)} deep`;
  return [
    tag("rect", {
      x: x + STRIP - 1.6,
      y: top + from,
      width: 1.6,
      height: to - from,
      fill: "#000",
      "fill-opacity": "0.12",
    }),
    tag("path", { d: `M${num(x)} ${num(top + from, 3)}h${STRIP}M${num(x)} ${num(top + to, 3)}h${STRIP}`, ...look }),
    text(0, 0, words, {
      "font-size": 2.3,
      transform: `translate(${num(x + STRIP - 2.2)} ${num(top + (from + to) / 2)}) rotate(-90)`,
      "text-anchor": "middle",
    }),
  ].join("");
}

/** Pale enough to read on and to spare ink; the number in the field says the level too. */
function stripTone(level: number, levels: number): string {
  return paperTone(((level - 1) / Math.max(1, levels - 1)) * 0.4, 1.01);
}
