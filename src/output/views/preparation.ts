import { caliper } from "../../core/book/book.ts";
import { leafNumber } from "../../core/book/leaf-number.ts";
import { numberLeaves } from "../../core/book/numbering.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import { type Pattern, type PatternBase, type PatternLeafBase, pictureLeaves } from "../../core/pattern/pattern.ts";
import { batchesOf } from "../../core/plan/batches.ts";
import { type LeafRun, scoringPlan } from "../../core/plan/scoring.ts";
import { MM_PER_INCH, type UnitSystem } from "../../core/units/length.ts";
import { leafAndPage, leafRun } from "../../words/leaves.ts";
import { formatLength, formatSize, styleFor } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import { fixed } from "../../words/numbers.ts";

/** How the book is made ready before the first cut. */
export interface Preparation {
  /** First and last picture leaf in words: `leaf 13, p. 17`. */
  readonly firstLeaf: string;
  readonly lastLeaf: string;
  readonly lastPatternPage: number;
  /** Why pattern page and book page differ: runs of leaves with one offset. */
  readonly offsets: readonly { readonly leaves: string; readonly text: string }[];
  readonly borders: readonly { readonly leaves: string; readonly count: number }[];
  /** None where nothing is pressed beforehand. */
  readonly scoring: readonly ScoredLevel[];
  readonly batches: readonly BatchRow[];
  /** Thickness of one leaf. */
  readonly caliper: string;
  /** Thickness of the maker's own packing pieces, where the kit states it. */
  readonly piece: string | undefined;
}

/** A level's line of the gauge and the leaves that need it. */
export interface ScoredLevel {
  /** Number of the gauge's line; undefined where the gauge has none at this depth. */
  readonly line: number | undefined;
  readonly name: string;
  readonly depth: string;
  readonly runs: readonly string[];
  readonly leaves: number;
}

/** A batch with the packing that it needs. */
export interface BatchRow {
  readonly number: number;
  readonly from: string;
  readonly to: string;
  readonly count: number;
  readonly packing: string;
  readonly pieces: number | undefined;
}

export function preparationOf(kit: Kit, pattern: AnyPattern): Preparation {
  const all: readonly PatternLeafBase[] = pattern.leaves;
  const leaves = pictureLeaves({ leaves: all });
  const { nameOf } = numberLeaves(pattern.book);
  const runText = (run: LeafRun): string => leafRun(run, nameOf);
  return {
    firstLeaf: leafAndPage(leaves[0]!),
    lastLeaf: leafAndPage(leaves.at(-1)!),
    lastPatternPage: leaves.at(-1)!.patternPage!,
    offsets: offsetRuns(leaves).map(({ first, last, offset }) => ({
      leaves: say.leafRun({ first, last }),
      text: offsetText(offset),
    })),
    borders: borderRuns(kit, pattern).map((run) => ({ leaves: runText(run), count: run.last - run.first + 1 })),
    scoring: pattern.corner ? [] : scoredLevels(pattern, kit.units, runText),
    batches: batchesOf({ book: pattern.book, leaves: all }, kit.fit.batch, kit.gaugeTile).map((batch) => ({
      number: batch.number,
      from: leafAndPage(batch.first),
      to: leafAndPage(batch.last),
      count: batch.count,
      packing: formatLength(batch.packing, styleFor(kit.units, kit.fit.markStep)),
      pieces: batch.tiles,
    })),
    caliper: thickness(caliper(pattern.book), kit.units),
    piece: kit.gaugeTile === undefined ? undefined : formatSize(kit.gaugeTile, kit.units),
  };
}

function borderRuns({ fit: { borderLeaves } }: Kit, { fit }: PatternBase): LeafRun[] {
  const [before, after] = borderLeaves;
  return [
    { first: leafNumber(fit.firstLeaf - before), last: leafNumber(fit.firstLeaf - 1) },
    { first: leafNumber(fit.lastLeaf + 1), last: leafNumber(fit.lastLeaf + after) },
  ].filter((run) => run.last >= run.first);
}

function scoredLevels(pattern: Pattern, units: UnitSystem, runText: (run: LeafRun) => string): ScoredLevel[] {
  return scoringPlan(pattern)
    .filter((row) => row.leaves > 0)
    .map((row) => {
      const { name, depth, line } = pattern.levels[row.level - 1]!;
      return {
        line,
        name: say.preparationLevelName({ number: row.level, name }),
        depth: formatSize(depth, units),
        runs: row.runs.map(runText),
        leaves: row.leaves,
      };
    });
}

/** Leaves whose book page is the pattern page plus one number; null where they have none. */
interface OffsetRun extends LeafRun {
  readonly offset: number | null;
}

/** Runs of picture leaves with one offset; unnumbered leaves stand in runs of their own. */
function offsetRuns(leaves: readonly PatternLeafBase[]): OffsetRun[] {
  const runs: OffsetRun[] = [];
  for (const leaf of leaves) {
    const offset = leaf.bookPage === null ? null : leaf.bookPage - leaf.patternPage!;
    const last = runs.at(-1);
    if (last && last.offset === offset) runs[runs.length - 1] = { ...last, last: leaf.leaf };
    else runs.push({ first: leaf.leaf, last: leaf.leaf, offset });
  }
  return runs;
}

function offsetText(offset: number | null): string {
  if (offset === null) return say.preparationUnnumbered();
  return say.preparationOffset({ sign: offset < 0 ? "minus" : "plus", offset: Math.abs(offset) });
}

/** A leaf is thin: more decimals than other lengths have. */
function thickness(mm: number, units: UnitSystem): string {
  return units === "mm" ? `${fixed(mm, 3)}\u00a0mm` : `${fixed(mm / MM_PER_INCH, 4)}\u00a0in`;
}
