import { caliper } from "../../core/book/book.ts";
import { bookPageOf, describeLeaf, numberLeaves } from "../../core/book/numbering.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { type Pattern, pictureLeaves } from "../../core/pattern/pattern.ts";
import { batchesOf } from "../../core/plan/batches.ts";
import { type LeafRun, scoringPlan } from "../../core/plan/scoring.ts";
import { type Dual, dualDepth, dualLength } from "../../words/dual.ts";
import { leafAndPage } from "./row.ts";

/** How the book is made ready before the first cut. */
export interface Preparation {
  /** First and last picture leaf in words: `leaf 13, p. 17`. */
  readonly firstLeaf: string;
  readonly lastLeaf: string;
  readonly lastPatternPage: number;
  /** Why pattern page and book page differ: runs of leaves with one offset. */
  readonly offsets: readonly { readonly leaves: string; readonly text: string }[];
  readonly borders: readonly { readonly leaves: string; readonly count: number }[];
  readonly scoring: readonly {
    readonly line: string;
    readonly name: string;
    readonly depth: Dual;
    readonly runs: readonly string[];
    readonly leaves: number;
  }[];
  readonly batches: readonly {
    readonly number: number;
    readonly from: string;
    readonly to: string;
    readonly count: number;
    readonly packing: Dual;
    readonly tiles: number | undefined;
  }[];
  readonly caliper: Dual;
  readonly tile: Dual | undefined;
}

export function preparationOf(kit: Kit, pattern: Pattern): Preparation {
  const leaves = pictureLeaves(pattern);
  const numbering = numberLeaves(pattern.book);
  const inWords = (run: LeafRun): string =>
    leafRunText(
      run,
      (leaf) => describeLeaf(numbering.nameOf(leaf)),
      (leaf) => bookPageOf(numbering.nameOf(leaf)) !== null,
    );
  const [before, after] = kit.fit.borderLeaves;
  const { firstLeaf, lastLeaf } = pattern.fit;
  const borders = [
    { first: firstLeaf - before, last: firstLeaf - 1, count: before },
    { first: lastLeaf + 1, last: lastLeaf + after, count: after },
  ].filter((border) => border.count > 0);
  return {
    firstLeaf: leafAndPage(leaves[0]!),
    lastLeaf: leafAndPage(leaves.at(-1)!),
    lastPatternPage: leaves.at(-1)!.patternPage!,
    offsets: offsetRuns(pattern).map((run) => ({ leaves: `leaves ${run.first} to ${run.last}`, text: run.text })),
    borders: borders.map((border) => ({ leaves: inWords(border), count: border.count })),
    scoring: scoringPlan(pattern)
      .map((row) => ({ row, level: pattern.levels[row.level - 1]! }))
      .filter(({ row }) => row.leaves > 0)
      .map(({ row, level }) => ({
        line: level.line === undefined ? "free" : String(level.line),
        name: `${row.level} ${level.name}`,
        depth: dualDepth(level.depth),
        runs: row.runs.map(inWords),
        leaves: row.leaves,
      })),
    batches: batchesOf(pattern, kit.fit.batch, kit.gaugeTile).map((batch) => ({
      number: batch.number,
      from: leafAndPage(batch.first),
      to: leafAndPage(batch.last),
      count: batch.count,
      packing: dualLength(batch.packing, kit.fit.markStep),
      tiles: batch.tiles,
    })),
    caliper: { mm: `${caliper(pattern.book).toFixed(3)} mm`, in: `${(caliper(pattern.book) / 25.4).toFixed(4)} in` },
    tile: kit.gaugeTile === undefined ? undefined : dualDepth(kit.gaugeTile),
  };
}

function leafRunText(run: LeafRun, name: (leaf: number) => string, numbered: (leaf: number) => boolean): string {
  const page = (leaf: number): string => (numbered(leaf) ? `p. ${name(leaf)}` : name(leaf));
  return run.first === run.last
    ? `leaf ${run.first} (${page(run.first)})`
    : `leaves ${run.first} to ${run.last} (${page(run.first)} to ${page(run.last)})`;
}

interface OffsetRun {
  readonly first: number;
  readonly last: number;
  readonly text: string;
}

/** Runs of picture leaves whose book page is the pattern page plus one number; unnumbered leaves stand in runs of their own. */
function offsetRuns(pattern: Pattern): OffsetRun[] {
  const runs: OffsetRun[] = [];
  for (const leaf of pictureLeaves(pattern)) {
    const offset = leaf.bookPage === null ? null : leaf.bookPage - leaf.patternPage!;
    const text =
      offset === null
        ? "unnumbered: count them"
        : `book page = pattern page ${offset < 0 ? "−" : "+"} ${Math.abs(offset)}`;
    const last = runs.at(-1);
    if (last && last.text === text) runs[runs.length - 1] = { ...last, last: leaf.leaf };
    else runs.push({ first: leaf.leaf, last: leaf.leaf, text });
  }
  return runs;
}
