import type { KitClass } from "./kit-class.ts";
import type { ToolBlock } from "./tool-blocks.ts";

/** A seat on its way through its blocks. */
interface Walker {
  readonly blocks: readonly ToolBlock[];
  /** Minutes before a task, by the task's index. */
  readonly waits: Map<number, number>;
  next: number;
  /** Minutes of work since the class began. */
  at: number;
}

/**
 * Seats take turns at the tools that they share: who comes first has them first, of several the one that stands first here.
 * Gives how long each seat waits before its tasks, minutes by the task's index.
 */
export function takeTurns(
  tools: KitClass["tools"],
  seats: readonly (readonly ToolBlock[])[],
): ReadonlyMap<number, number>[] {
  const free = new Map(Object.entries(tools).map(([tool, count]) => [tool, Array<number>(count).fill(0)]));
  const walkers = seats.map((blocks): Walker => ({ blocks, waits: new Map(), next: 0, at: 0 }));
  if (free.size > 0) for (let one = first(walkers); one; one = first(walkers)) go(one, free);
  return walkers.map(({ waits }) => waits);
}

/** One block of a seat: it takes the tools that are free first, and gives them back when they are no longer held. */
function go(one: Walker, free: ReadonlyMap<string, number[]>): void {
  const { task, tools, holds, minutes } = one.blocks[one.next]!;
  const shared = holds > 0 ? tools.flatMap((tool) => (free.has(tool) ? [free.get(tool)!] : [])) : [];
  const begins = Math.max(one.at, ...shared.map((times) => Math.min(...times)));
  for (const times of shared) times[times.indexOf(Math.min(...times))] = begins + holds;
  if (begins > one.at) one.waits.set(task, (one.waits.get(task) ?? 0) + begins - one.at);
  one.at = begins + minutes;
  one.next += 1;
}

/** Whose block begins next; undefined when all are through. */
function first(walkers: readonly Walker[]): Walker | undefined {
  return walkers
    .filter(({ blocks, next }) => next < blocks.length)
    .reduce<Walker | undefined>((best, one) => (best && best.at <= one.at ? best : one), undefined);
}
