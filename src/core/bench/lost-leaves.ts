import type { LeafNumber } from "../book/leaf-number.ts";
import { leafOfWork } from "./bench-item.ts";
import { inOrder, type LostLeaf, type Progress } from "./progress.ts";

/** Leaves a leaf out. `changed` are the leaves whose marks change with it: their ticks, notches and tacks are taken off, all others stay. */
export function loseLeaf(progress: Progress, leaf: LeafNumber, changed: readonly LeafNumber[]): Progress {
  const gone = new Set([...changed, leaf]);
  const cleared = progress.ticks.filter((tick) => gone.has(tick.leaf));
  const ticks = progress.ticks.filter((tick) => !gone.has(tick.leaf));
  const undone = progress.passed.filter((name) => isWorkOn(name, gone));
  const passed = progress.passed.filter((name) => !isWorkOn(name, gone));
  return { ...progress, ticks, passed, lost: [...progress.lost, { leaf, cleared, ...keptNames(undone) }] };
}

/**
 * Takes a lost leaf back in. Ticks, notches and tacks of the leaves that change are taken off; those that went with the leaf
 * come back where it was the last one lost, for only then their marks are again those they were folded with. For the same
 * reason leaves lost later keep only those of leaves before this one.
 */
export function bringBack(progress: Progress, leaf: LeafNumber, changed: readonly LeafNumber[]): Progress {
  const index = progress.lost.findIndex((one) => one.leaf === leaf);
  if (index < 0) return progress;
  const gone = new Set(changed);
  const last = index === progress.lost.length - 1 ? progress.lost[index] : undefined;
  const kept = progress.ticks.filter((tick) => !gone.has(tick.leaf));
  const back = (last?.cleared ?? []).filter((tick) => !kept.some((one) => one.leaf === tick.leaf));
  const passed = progress.passed.filter((name) => !isWorkOn(name, gone));
  const later = progress.lost.slice(index + 1).map((one) => before(one, leaf));
  return {
    ...progress,
    ticks: inOrder([...kept, ...back]),
    passed: [...new Set([...passed, ...(last?.undone ?? [])])],
    lost: [...progress.lost.slice(0, index), ...later],
  };
}

/** Lost leaves in book order, as the refit lists them. */
export function lostOf(progress: Progress): LeafNumber[] {
  return progress.lost.map((one) => one.leaf).sort((a, b) => a - b);
}

/** What went with a lost leaf, of leaves before another one. */
function before({ leaf, cleared, undone = [] }: LostLeaf, other: LeafNumber): LostLeaf {
  const names = undone.filter((name) => leafOfWork(name)! < other);
  return { leaf, cleared: cleared.filter((tick) => tick.leaf < other), ...keptNames(names) };
}

function keptNames(undone: readonly string[]): Pick<LostLeaf, "undone"> {
  return undone.length > 0 ? { undone } : {};
}

function isWorkOn(name: string, leaves: ReadonlySet<LeafNumber>): boolean {
  const leaf = leafOfWork(name);
  return leaf !== undefined && leaves.has(leaf);
}
