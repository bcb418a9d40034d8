import type { BenchPlan } from "../../core/bench/bench-plan.ts";
import { describeLeaf, numberLeaves } from "../../core/book/numbering.ts";
import type { Pattern, PatternLeaf } from "../../core/pattern/pattern.ts";
import { linesOf } from "../../core/plan/scoring.ts";
import { tackList } from "../../core/plan/tack-list.ts";
import type { LengthStyle, UnitSystem } from "../../core/units/length.ts";
import { leafAndPage } from "../../words/leaves.ts";
import { formatNumber, formatSize } from "../../words/lengths.ts";
import { type Row, rowOf } from "./row.ts";

/** Everything that is shown of one leaf, as text; lengths in the maker's units. */
export interface LeafCard {
  readonly row: Row;
  readonly source: PatternLeaf;
  /** What the big figure is: a printed page, or a leaf that has none. */
  readonly big: string;
  readonly bigIsPage: boolean;
  /** `Border leaf 3 of 12: fold it whole.` Empty on picture leaves. */
  readonly border: string;
  /** 1-based among all folded leaves. */
  readonly place: number;
  readonly places: number;
  /** Levels that this leaf needs, with line and depth. */
  readonly levels: readonly LevelText[];
  /** What to know before cutting: stepped folds, notch, tacks; in the order of work. */
  readonly notes: readonly string[];
  /** Lost leaves right before this one, in words. */
  readonly leftOut: readonly string[];
  /** The whole leaf in a sentence or two, to be spoken. */
  readonly spoken: string;
}

export interface LevelText {
  readonly number: number;
  readonly name: string;
  /** `line 3, 26 mm` or `26 mm`. */
  readonly place: string;
}

/** The card of one of the plan's stops. */
export function leafCard(plan: BenchPlan, leaf: number, style: LengthStyle): LeafCard {
  const { pattern, stops } = plan;
  const source = pattern.leaves.find((one) => one.leaf === leaf)!;
  const row = rowOf(source, pattern, style);
  const big = row.unnumbered ? `leaf ${leaf}` : row.bookPage;
  const border = borderText(plan, source);
  const card = {
    row,
    source,
    big,
    bigIsPage: !row.unnumbered,
    border,
    place: stops.indexOf(leaf) + 1,
    places: stops.length,
    levels: linesOf(source, pattern).map((level) => levelText(pattern, level, style.units)),
    notes: notesOf(source, row, pattern, style),
    leftOut: lostBefore(pattern, leaf),
  };
  return { ...card, spoken: speak(card, style.units) };
}

function borderText(plan: BenchPlan, source: PatternLeaf): string {
  if (source.patternPage !== null) return "";
  const { firstLeaf } = plan.pattern.fit;
  const side = plan.pattern.leaves.filter(
    (one) => one.patternPage === null && one.leaf < firstLeaf === source.leaf < firstLeaf,
  );
  const where = source.leaf < firstLeaf ? "before" : "after";
  return `Border leaf ${side.indexOf(source) + 1} of ${side.length} ${where} the picture`;
}

function levelText(pattern: Pattern, number: number, units: UnitSystem): LevelText {
  const level = pattern.levels[number - 1]!;
  const depth = formatSize(level.depth, units);
  return { number, name: level.name, place: level.line === undefined ? depth : `line ${level.line}, ${depth}` };
}

function notesOf(source: PatternLeaf, row: Row, pattern: Pattern, style: LengthStyle): string[] {
  const front = levelText(pattern, 1, style.units);
  const only = levelText(pattern, source.spans[0]!.level, style.units);
  const stepped = pattern.fit.foldStyle === "stepped" && row.marks.length > 0;
  const length = (mm: number): string => formatNumber(mm, style);
  const tacks = tackList(pattern).glued.filter((tack) => tack.leaf === source);
  return [
    row.marks.length === 0 ? `No marks: fold the whole leaf at level ${only.number} (${only.place}).` : "",
    stepped ? `First fold the whole leaf at ${front.name} (${front.place}); cuts start at that folded edge.` : "",
    row.notch
      ? `Light notch: mark ${row.notch.from} to ${row.notch.to}, ${row.notch.depth} ${style.units} deep from the unfolded fore-edge; cut it after folding.`
      : "",
    tacks.length > 0
      ? `Glue later: ${tacks.map((tack) => `${length(tack.from)}–${length(tack.to)}`).join(", ")} ${style.units}.`
      : "",
  ].filter((note) => note !== "");
}

function lostBefore(pattern: Pattern, leaf: number): string[] {
  const { nameOf } = numberLeaves(pattern.book);
  const words: string[] = [];
  for (let lost = leaf - 1; pattern.lostLeaves.includes(lost); lost -= 1) {
    const name = nameOf(lost);
    words.unshift(name.kind === "numbered" ? `leaf ${lost}, p. ${name.recto}` : `leaf ${lost} (${describeLeaf(name)})`);
  }
  return words;
}

function speak(card: Omit<LeafCard, "spoken">, units: UnitSystem): string {
  const { row, source } = card;
  const where = leafAndPage(source);
  const unit = units === "mm" ? "millimetres" : "inches";
  const marks = row.marks.map((mark) => `${mark.at}, cut ${mark.cut}`).join("; ");
  const count = row.marks.length === 1 ? "1 mark" : `${row.marks.length} marks`;
  const work =
    row.marks.length === 0
      ? ""
      : ` ${count} in ${unit} from the head: ${marks}. Folds from head to tail: ${row.folds.join(", ")}.`;
  const notes = card.notes.join(" ");
  const skipped = card.leftOut.length > 0 ? ` Left out before it: ${card.leftOut.join("; ")}.` : "";
  const page = card.border === "" ? `, pattern page ${row.patternPage}` : `. ${card.border}`;
  return `${where[0]!.toUpperCase()}${where.slice(1)}${page}.${work} ${notes}${skipped}`.trim();
}
