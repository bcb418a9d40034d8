import type { LeafNumber } from "../../core/book/leaf-number.ts";
import type { PatternLeafBase } from "../../core/pattern/pattern.ts";
import type { Batch } from "../../core/plan/batches.ts";
import type { MarkText, Row } from "./row.ts";

/** A fold, and the mark at its lower end; the last fold of a leaf has none. */
export interface Pair {
  /** The level that the strip above the mark is folded to. */
  readonly fold: number;
  readonly mark: MarkText | undefined;
}

/** Leaves that are worked alike: one leaf, or a run of whole leaves that are folded to one level. */
export interface TableLine {
  readonly first: Row;
  readonly last: Row;
  /** Folds and marks from head to tail. */
  readonly pairs: readonly Pair[];
}

/** A tack of a leaf: where it is, from the head. */
export interface TackText {
  readonly leaf: LeafNumber;
  readonly place: string;
}

/** What is worked in one go: a batch, or the border leaves before and after the picture. */
export interface TableBlock {
  /** None for border leaves. */
  readonly batch: Batch | undefined;
  readonly rows: readonly TableLine[];
  /** Leaves and cuts of the block, and cuts up to and with it. */
  readonly leaves: number;
  readonly cuts: number;
  readonly cutsSoFar: number;
  /** Leaves with a notch. */
  readonly notched: number;
  /** Heights that all its notches share. */
  readonly notches: { readonly from: string; readonly to: string } | undefined;
  readonly tacks: readonly TackText[];
  readonly last: boolean;
}

/** The pattern's table by batches, in the order of the work. */
export function tableBlocks(rows: readonly Row[], batches: readonly Batch[], tacks: readonly TackText[]): TableBlock[] {
  const parts = parted(rows, batches);
  let cutsSoFar = 0;
  return parts.map(({ batch, rows: own }, i) => {
    const cuts = own.reduce((sum, row) => sum + row.marks.length, 0);
    cutsSoFar += cuts;
    return {
      batch,
      rows: runsOf(own).map((run) => ({
        first: run[0]!,
        last: run.at(-1)!,
        pairs: pairsOf(run[0]!),
      })),
      leaves: own.length,
      cuts,
      cutsSoFar,
      notched: own.filter((row) => row.notch).length,
      notches: sharedHeights(own),
      tacks: tacks.filter(({ leaf }) => own.some((row) => row.leaf === leaf)),
      last: i === parts.length - 1,
    };
  });
}

/** Border leaves before the first batch, the batches, border leaves after the last. */
export function parted<One extends Pick<Row, "leaf">, Leaf extends PatternLeafBase>(
  rows: readonly One[],
  batches: readonly Batch<Leaf>[],
): { batch: Batch<Leaf> | undefined; rows: One[] }[] {
  const [first, last] = [batches[0], batches.at(-1)];
  const within = (from: number, to: number): One[] => rows.filter(({ leaf }) => leaf >= from && leaf <= to);
  return [
    { batch: undefined, rows: within(0, (first?.first.leaf ?? Number.POSITIVE_INFINITY) - 1) },
    ...batches.map((batch) => ({ batch, rows: within(batch.first.leaf, batch.last.leaf) })),
    { batch: undefined, rows: last ? within(last.last.leaf + 1, Number.POSITIVE_INFINITY) : [] },
  ].filter((part) => part.rows.length > 0);
}

/** Neighbouring whole leaves of one level stand together; every other leaf alone. */
function runsOf(rows: readonly Row[]): Row[][] {
  const runs: Row[][] = [];
  for (const row of rows) {
    const before = runs.at(-1)?.at(-1);
    if (before && isWhole(before) && isWhole(row) && before.folds[0] === row.folds[0] && before.leaf + 1 === row.leaf)
      runs.at(-1)!.push(row);
    else runs.push([row]);
  }
  return runs;
}

export function isWhole(row: Row): boolean {
  return row.marks.length === 0 && row.notch === undefined;
}

function pairsOf({ folds, marks }: Row): Pair[] {
  return folds.map((fold, i) => ({ fold, mark: marks[i] }));
}

function sharedHeights(rows: readonly Row[]): TableBlock["notches"] {
  const notches = rows.flatMap(({ notch }) => (notch ? [notch] : []));
  const [first] = notches;
  return first && notches.every(({ from, to }) => from === first.from && to === first.to) ? first : undefined;
}
