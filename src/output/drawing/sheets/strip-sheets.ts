import type { Kit } from "../../../core/kit/kit.ts";
import type { Pattern, PatternBase, PatternLeaf, PatternLeafBase } from "../../../core/pattern/pattern.ts";
import type { Batch } from "../../../core/plan/batches.ts";
import { type LengthStyle, roundTo } from "../../../core/units/length.ts";
import { formatLength } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { text } from "../svg-text.ts";
import { lettersWithin, wordsWidth } from "../words-width.ts";
import { cutStrip } from "./cut-strip.ts";
import { FOLD, SMALL, STRIP, type StripFace, type StripPart } from "./strip.ts";
import { drawStrips } from "./strip-drawing.ts";
import { BAR_ROOM, calibration, SHEET } from "./true-scale.ts";

/** Strip parts overlap by this much where a leaf is higher than the sheet. */
const OVERLAP = 20;

/** Marking strips at true scale: the drawing of one sheet, and what it holds. */
export interface StripSheet {
  readonly drawing: string;
  /** Numbers of the batches whose strips these are. */
  readonly batches: { readonly first: number; readonly last: number };
  readonly first: PatternLeafBase;
  readonly last: PatternLeafBase;
  readonly part: StripPart;
  readonly partNumber: number;
  readonly parts: number;
}

/** Strips that are printed on one sheet: of a batch, of several small ones, or some of a large one. */
interface SheetLeaves<Leaf> {
  readonly first: number;
  readonly last: number;
  readonly leaves: readonly Leaf[];
}

/** How a way of folding marks its leaves. */
export interface StripWay<Leaf> {
  readonly hasMarks: (leaf: Leaf) => boolean;
  /** Heights of its marks from the head, mm. */
  readonly marksOf: (leaf: Leaf) => readonly number[];
  readonly show: (leaf: Leaf, part: StripPart, style: LengthStyle) => StripFace;
  /** What its strips show, in words. */
  readonly key: string;
}

/**
 * A strip for each leaf with marks, batch by batch, to be laid along its fore-edge with the tab over the head edge. Leaves that
 * are folded whole need none. Where the marks reach further than the sheet, the strips come in parts that overlap.
 */
export function stripSheets(kit: Kit, pattern: Pattern, batches: readonly Batch[]): StripSheet[] {
  return layStrips(kit, pattern, batches, {
    hasMarks: (leaf) => hasMarks(leaf, pattern),
    marksOf: ({ cuts }) => cuts.map(({ at }) => at),
    show: (leaf, part, style) => cutStrip(leaf, part, pattern, style),
    key: say.drawStripKey({ style: pattern.fit.foldStyle }),
  });
}

/** The same for any way of folding. */
export function layStrips<Leaf extends PatternLeafBase>(
  kit: Kit,
  pattern: Pick<PatternBase, "book"> & { readonly leaves: readonly Leaf[] },
  batches: readonly Batch<Leaf>[],
  way: StripWay<Leaf>,
): StripSheet[] {
  const style: LengthStyle = { units: kit.units, step: kit.fit.markStep };
  const parts = stripParts(
    pattern.book.leafHeight,
    pattern.leaves.flatMap((leaf) => way.marksOf(leaf)),
  );
  return parts.flatMap((part, p) =>
    sheetsOf(pattern.leaves, batches, way).map(({ first, last, leaves }) => {
      const strips = leaves.map((leaf, n) => ({
        leaf,
        x: BAR_ROOM.left + 4 + n * STRIP,
        ...way.show(leaf, part, style),
      }));
      const drawing = heading(style, part, way.key) + drawStrips(strips, part) + calibration(kit.units);
      const ends = { first: leaves[0]!, last: leaves.at(-1)! };
      return { drawing, batches: { first, last }, ...ends, part, partNumber: p + 1, parts: parts.length };
    }),
  );
}

/** A sheet for each batch, where that takes no more paper than filling sheets: small batches share one, large ones are spread. */
function sheetsOf<Leaf extends PatternLeafBase>(
  all: readonly Leaf[],
  batches: readonly Batch<Leaf>[],
  way: StripWay<Leaf>,
): SheetLeaves<Leaf>[] {
  const most = Math.floor((SHEET.width - BAR_ROOM.left - 5) / STRIP);
  const marked = batches
    .map(({ number, first, last }) => ({
      first: number,
      last: number,
      leaves: all.filter(({ leaf }) => leaf >= first.leaf && leaf <= last.leaf).filter(way.hasMarks),
    }))
    .filter(({ leaves }) => leaves.length > 0);
  const filled = spread(joined(marked), most);
  const aligned: SheetLeaves<Leaf>[] = [];
  for (const batch of marked) {
    const before = aligned.at(-1);
    const both = before && joined([before, batch]);
    if (both && both.leaves.length <= most) aligned[aligned.length - 1] = both;
    else aligned.push(...spread(batch, most));
  }
  return aligned.length <= filled.length ? aligned : filled.map((sheet) => named(sheet, marked));
}

/** Evenly over as few sheets as it takes. */
function spread<Leaf>(all: SheetLeaves<Leaf>, most: number): SheetLeaves<Leaf>[] {
  const { length } = all.leaves;
  const sheets = Math.ceil(length / most);
  const at = (i: number): number => Math.round((i * length) / sheets);
  return Array.from({ length: sheets }, (_, i) => ({ ...all, leaves: all.leaves.slice(at(i), at(i + 1)) }));
}

function joined<Leaf>(parts: readonly SheetLeaves<Leaf>[]): SheetLeaves<Leaf> {
  return {
    first: parts[0]?.first ?? 0,
    last: parts.at(-1)?.last ?? 0,
    leaves: parts.flatMap(({ leaves }) => leaves),
  };
}

/** The batches that a sheet's leaves are of. */
function named<Leaf>(sheet: SheetLeaves<Leaf>, batches: readonly SheetLeaves<Leaf>[]): SheetLeaves<Leaf> {
  const own = batches.filter(({ leaves }) => leaves.some((leaf) => sheet.leaves.includes(leaf)));
  return { ...joined(own), leaves: sheet.leaves };
}

function hasMarks({ leaf, cuts }: PatternLeaf, { pocket }: Pattern): boolean {
  return cuts.length > 0 || (pocket?.notches.some((notch) => notch.leaf === leaf) ?? false);
}

/** One part where the marks fit on the sheet, otherwise as many as it takes. */
function stripParts(leafHeight: number, marks: readonly number[]): StripPart[] {
  const room = SHEET.height - BAR_ROOM.foot - FOLD - 1;
  const end = Math.min(leafHeight, Math.max(0, ...marks) + 8);
  const parts: StripPart[] = [];
  for (let from = 0; parts.length === 0 || parts.at(-1)!.to < end; from += roundTo(room - OVERLAP, 10)) {
    parts.push({ from, to: Math.min(from + room, end) });
  }
  return parts;
}

function heading(style: LengthStyle, { from }: StripPart, key: string): string {
  const place = from === 0 ? say.drawStripFirst() : say.drawStripNext({ from: formatLength(from, style) });
  const room = SHEET.width - BAR_ROOM.left - 4;
  const line = (y: number, words: string, size: number): string =>
    text(BAR_ROOM.left + 4, y, words, lettersWithin(room, words, size));
  const whole = `${place} ${key}`;
  return wordsWidth(whole, 2.6) <= room ? line(8, whole, 2.6) : line(6.2, place, SMALL) + line(8.7, key, SMALL);
}
