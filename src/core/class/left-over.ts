import type { Task } from "./tasks.ts";

/** A seat's work as it is counted off in the room; minutes at the seat's pace. */
export interface SeatWork {
  /** Before the first leaf. */
  readonly before: number;
  /** Leaf after leaf in the order of the work; `page` is its printed recto, null where it has none. */
  readonly leaves: readonly { readonly page: number | null; readonly minutes: number }[];
  /** After the last leaf. */
  readonly after: number;
}

/** How far a seat is, as someone saw: the last page that is folded, or that all is done. */
export interface Standing {
  readonly page: number | undefined;
  readonly finished: boolean;
}

/** What is left to do. */
export interface LeftOver {
  readonly leaves: number;
  /** The printed recto of the next leaf that has one; undefined without leaves. */
  readonly from: number | undefined;
  readonly minutes: number;
  /** Share of the whole work that is done, 0 to 1. */
  readonly share: number;
}

/** A seat's tasks as they are counted off. */
export function seatWork(tasks: readonly Task[]): SeatWork {
  const minutesOf = (kind: Task["kind"]): number =>
    tasks.filter((task) => task.kind === kind).reduce((sum, { minutes }) => sum + minutes, 0);
  return {
    before: minutesOf("scores"),
    leaves: tasks.flatMap(({ leaf, minutes }) => (leaf ? [{ page: leaf.bookPage, minutes }] : [])),
    after: minutesOf("parts"),
  };
}

/**
 * What is left where a seat stands. A page on either side of a leaf means that leaf and all before it; without a page nothing
 * is done. Leaves without a printed page count as done with the next one that has one.
 */
export function leftOver(work: SeatWork, { page, finished }: Standing): LeftOver {
  const whole = sum(work.leaves) + work.before + work.after;
  if (finished) return { leaves: 0, from: undefined, minutes: 0, share: 1 };
  const done =
    page === undefined ? 0 : work.leaves.findLastIndex((leaf) => leaf.page !== null && leaf.page <= page) + 1;
  const left = work.leaves.slice(done);
  const minutes = (done === 0 ? work.before : 0) + sum(left) + work.after;
  return {
    leaves: left.length,
    from: left.find((leaf) => leaf.page !== null)?.page ?? undefined,
    minutes,
    share: whole === 0 ? 1 : 1 - minutes / whole,
  };
}

function sum(leaves: SeatWork["leaves"]): number {
  return leaves.reduce((total, { minutes }) => total + minutes, 0);
}
