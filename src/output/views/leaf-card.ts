import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import { type LeafNumber, leafNumber } from "../../core/book/leaf-number.ts";
import type { Pattern, PatternBase, PatternLeaf, PatternLeafBase } from "../../core/pattern/pattern.ts";
import { linesOf } from "../../core/plan/scoring.ts";
import { tackList } from "../../core/plan/tack-list.ts";
import type { Tack } from "../../core/spans/tacks.ts";
import type { LengthStyle, UnitSystem } from "../../core/units/length.ts";
import { leafArguments, leafWords } from "../../words/bench.ts";
import { formatLength, formatNumber, formatSize } from "../../words/lengths.ts";
import { listText } from "../../words/lists.ts";
import * as say from "../../words/messages.ts";
import { type Row, rowOf } from "./row.ts";

/** Everything that is shown of one leaf, as text; lengths in the maker's units. */
export interface LeafCard {
  readonly row: Row;
  readonly source: PatternLeaf;
  /** What the big figure is: a printed page, or a leaf that has none. */
  readonly big: string;
  readonly bigIsPage: boolean;
  /** `Border leaf 3 of 12 before the picture`; empty on picture leaves. */
  readonly border: string;
  /** 1-based among all folded leaves. */
  readonly place: number;
  readonly places: number;
  /** Levels that this leaf needs, with line and depth. */
  readonly levels: readonly LevelText[];
  /** What to know before cutting: stepped folds, notch, tacks; in the order of work. */
  readonly notes: readonly string[];
  /** Leaves left out right before this one, in words. */
  readonly leftOut: readonly string[];
  /** The whole leaf in a few sentences, to be spoken. */
  readonly spoken: string;
}

/** A level of a leaf; `words` are its name and where it is folded: `wall, line 3, 26 mm`. */
export interface LevelText {
  readonly number: number;
  readonly words: string;
}

/** The card of one of the plan's stops. */
export function leafCard(plan: BenchPlan<Pattern>, leaf: LeafNumber, style: LengthStyle): LeafCard {
  const { pattern, stops } = plan;
  const source = pattern.leaves.find((one) => one.leaf === leaf)!;
  const row = rowOf(source, pattern, style);
  const card = {
    row,
    source,
    big: row.unnumbered ? say.benchBigLeaf({ leaf }) : row.bookPage,
    bigIsPage: !row.unnumbered,
    border: borderText(plan, source),
    place: stops.indexOf(leaf) + 1,
    places: stops.length,
    levels: linesOf(source, pattern).map((number) => ({
      number,
      words: levelWords(pattern, number, style.units),
    })),
    notes: notesOf(source, row, pattern, style),
    leftOut: leftOutBefore(plan, leaf),
  };
  return { ...card, spoken: spokenOf(card, style.units) };
}

/** `Border leaf 3 of 12 before the picture`; empty on picture leaves. */
export function borderText({ pattern }: { readonly pattern: PatternBase }, source: PatternLeafBase): string {
  if (source.patternPage !== null) return "";
  const { firstLeaf } = pattern.fit;
  const before = source.leaf < firstLeaf;
  const side = pattern.leaves.filter((one) => one.patternPage === null && one.leaf < firstLeaf === before);
  const number = side.indexOf(source) + 1;
  return say.benchBorder({ number, count: side.length, side: before ? "before" : "after" });
}

/** `wall, line 3, 26 mm`. */
export function levelWords(pattern: Pick<PatternBase, "levels">, number: number, units: UnitSystem): string {
  return say.benchLevel({ name: nameOf(pattern, number), place: placeOf(pattern, number, units) });
}

function nameOf(pattern: Pick<PatternBase, "levels">, number: number): string {
  return pattern.levels[number - 1]!.name;
}

/** `line 3, 26 mm`, or `26 mm` where the gauge has no line there. */
function placeOf(pattern: Pick<PatternBase, "levels">, number: number, units: UnitSystem): string {
  const level = pattern.levels[number - 1]!;
  const depth = formatSize(level.depth, units);
  return level.line === undefined ? depth : say.benchLine({ line: level.line, depth });
}

function notesOf(source: PatternLeaf, row: Row, pattern: Pattern, style: LengthStyle): string[] {
  const whole = row.marks.length === 0;
  const level = source.spans[0]!.level;
  const stepped = pattern.fit.foldStyle === "stepped" && !whole;
  const tacks = tackList(pattern).glued.filter((tack) => tack.leaf === source);
  return [
    ...(whole ? [say.benchNoteWhole({ level, place: placeOf(pattern, level, style.units) })] : []),
    ...(stepped ? [say.benchNoteStepped({ name: nameOf(pattern, 1), place: placeOf(pattern, 1, style.units) })] : []),
    ...(row.notch ? [say.benchNoteNotch({ ...row.notch, depth: `${row.notch.depth}\u00a0${style.units}` })] : []),
    ...(tacks.length > 0 ? [say.benchNoteTacks({ stretches: stretchesText(tacks, style) })] : []),
  ];
}

/** `12–34 mm and 50–60 mm`. */
export function stretchesText(tacks: readonly Tack[], style: LengthStyle): string {
  return listText(
    tacks.map(({ from, to }) => say.benchStretch({ from: formatNumber(from, style), to: formatLength(to, style) })),
  );
}

/** Leaves that are left out right before one, in words. */
export function leftOutBefore(plan: { readonly pattern: PatternBase }, leaf: LeafNumber): string[] {
  const words: string[] = [];
  for (let lost = leafNumber(leaf - 1); plan.pattern.lostLeaves.includes(lost); lost = leafNumber(lost - 1))
    words.unshift(leafWords(plan, lost));
  return words;
}

function spokenOf(card: Omit<LeafCard, "spoken">, units: UnitSystem): string {
  const { row, source, leftOut } = card;
  const marks = row.marks.map((mark) => say.benchSpokenMark(mark)).join("; ");
  return [
    say.benchSpokenLeaf(leafArguments(source.leaf, source.name)),
    card.border === ""
      ? say.benchSpokenPatternPage({ page: row.patternPage })
      : say.benchSpokenBorder({ border: card.border }),
    ...(row.marks.length > 0
      ? [
          say.benchSpokenMarks({ count: row.marks.length, units, marks }),
          say.benchSpokenFolds({ folds: row.folds.join(", ") }),
        ]
      : []),
    ...card.notes,
    ...(leftOut.length > 0 ? [say.benchSpokenLeftOut({ leaves: listText(leftOut) })] : []),
  ].join(" ");
}
