import type { Kit } from "../../../core/kit/kit.ts";
import { type Pattern, type PatternLeaf, pictureLeaves } from "../../../core/pattern/pattern.ts";
import { type LengthStyle, roundTo } from "../../../core/units/length.ts";
import { formatLength } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { text } from "../svg-text.ts";
import { lettersWithin, wordsWidth } from "../words-width.ts";
import { SMALL, STRIP, type StripPart, strip, TAB, TITLE } from "./strip.ts";
import { BAR_ROOM, calibration, SHEET } from "./true-scale.ts";

/** Strip parts overlap by this much where a leaf is higher than the sheet. */
const OVERLAP = 20;

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
      const drawing = heading(style, part, pattern) + strips.join("") + calibration(kit.units);
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

function heading(style: LengthStyle, { from }: StripPart, { fit }: Pattern): string {
  const place = from === 0 ? say.drawStripFirst() : say.drawStripNext({ from: formatLength(from, style) });
  const key = say.drawStripKey({ style: fit.foldStyle });
  const room = SHEET.width - BAR_ROOM.left - 4;
  const line = (y: number, words: string, size: number): string =>
    text(BAR_ROOM.left + 4, y, words, lettersWithin(room, words, size));
  const whole = `${place} ${key}`;
  return wordsWidth(whole, 2.6) <= room ? line(8, whole, 2.6) : line(6.2, place, SMALL) + line(8.7, key, SMALL);
}
