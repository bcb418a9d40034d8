import type { LeafNumber } from "../book/leaf-number.ts";
import type { LeafRun } from "../plan/scoring.ts";
import { type BenchItem, type LeavesOfBatch, leafWorkName, type ScoredRun, scoreName } from "./bench-item.ts";
import { type Glued, type Progress, passGate } from "./progress.ts";

/** Whether a piece of other work is done: a run of leaves where every leaf that needs the line has it, a batch where every leaf is notched or tacked. */
export function isItemDone(progress: Progress, item: BenchItem): boolean {
  switch (item.kind) {
    case "step":
      return progress.passed.includes(item.name);
    case "score":
      return openRun(progress, item) === undefined;
    case "leaves":
      return openLeaves(progress, item).length === 0;
  }
}

/** From the first to the last leaf of a run that still needs its line; undefined where none does. */
export function openRun(progress: Progress, item: ScoredRun): LeafRun | undefined {
  const scored = scoredOf(progress, item.level);
  const open = item.needed.filter((leaf) => !scored.some(({ first, last }) => leaf >= first && leaf <= last));
  return open.length === 0 ? undefined : { first: open[0]!, last: open.at(-1)! };
}

/** Leaves of a batch that are still to be notched or tacked. */
export function openLeaves({ passed }: Progress, { work, leaves }: LeavesOfBatch): LeafNumber[] {
  return leaves.filter((leaf) => !passed.includes(leafWorkName(work, leaf)));
}

/** Ticks a piece of other work. The time since the last tick is none of the next leaf's; from now on glue dries. */
export function doItem(progress: Progress, item: BenchItem): Progress {
  if (isItemDone(progress, item)) return progress;
  const { clock } = progress;
  const dries = item.step.dries > 0 ? [{ item: item.name, at: clock.seen }] : [];
  const glued = gluedBut(progress, item, dries);
  return { ...passAll(progress, item), glued, clock: { ...clock, ticked: clock.worked } };
}

/** Ticks other work that was done away from this page. */
export function doUntimed(progress: Progress, items: readonly BenchItem[]): Progress {
  return items.reduce(passAll, progress);
}

function passAll(progress: Progress, item: BenchItem): Progress {
  return namesOf(item).reduce(passGate, progress);
}

/** Takes the tick off again. */
export function undoItem(progress: Progress, item: BenchItem): Progress {
  const undone = item.kind === "score" ? namesWithin(progress, item) : namesOf(item);
  const passed = progress.passed.filter((name) => !undone.includes(name));
  return { ...progress, passed, glued: gluedBut(progress, item, []) };
}

/** What is glued, with other stamps for one item. */
function gluedBut({ glued = [] }: Progress, item: BenchItem, own: readonly Glued[]): Glued[] | undefined {
  const all = [...glued.filter((one) => one.item !== item.name), ...own];
  return all.length > 0 ? all : undefined;
}

function namesOf(item: BenchItem): string[] {
  return item.kind === "leaves" ? item.leaves.map((leaf) => leafWorkName(item.work, leaf)) : [item.name];
}

/** Names of what was scored of a run, also where the run was another when it was. */
function namesWithin(progress: Progress, { level, run }: ScoredRun): string[] {
  return scoredOf(progress, level)
    .filter(({ first, last }) => first <= run.last && last >= run.first)
    .map((scored) => scoreName(level, scored));
}

function scoredOf({ passed }: Progress, level: number): LeafRun[] {
  return passed.flatMap((name) => {
    const [, of, first, last] = /^score (\d+) (\d+)-(\d+)$/.exec(name) ?? [];
    return Number(of) === level ? [{ first: Number(first), last: Number(last) } as LeafRun] : [];
  });
}
