import type { LeafRun } from "../plan/scoring.ts";
import { type BenchItem, type ScoredRun, scoreName } from "./bench-item.ts";
import { type Progress, passGate } from "./progress.ts";

/** Whether a piece of other work is done. A run of leaves is scored where every leaf that needs the line is. */
export function isItemDone(progress: Progress, item: BenchItem): boolean {
  return item.kind === "score" ? openRun(progress, item) === undefined : progress.passed.includes(item.name);
}

/** From the first to the last leaf of a run that still needs its line; undefined where none does. */
export function openRun(progress: Progress, item: ScoredRun): LeafRun | undefined {
  const scored = scoredOf(progress, item.level);
  const open = item.needed.filter((leaf) => !scored.some(({ first, last }) => leaf >= first && leaf <= last));
  return open.length === 0 ? undefined : { first: open[0]!, last: open.at(-1)! };
}

/** Ticks a piece of other work; the time since the last tick is none of the next leaf's. */
export function doItem(progress: Progress, item: BenchItem): Progress {
  if (isItemDone(progress, item)) return progress;
  const { clock } = progress;
  return { ...passGate(progress, item.name), clock: { ...clock, ticked: clock.worked } };
}

/** Takes the tick off again. */
export function undoItem(progress: Progress, item: BenchItem): Progress {
  const undone = item.kind === "score" ? namesWithin(progress, item) : [item.name];
  return { ...progress, passed: progress.passed.filter((name) => !undone.includes(name)) };
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
