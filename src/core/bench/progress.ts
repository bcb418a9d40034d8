import type { LeafNumber } from "../book/leaf-number.ts";
import type { Place } from "./places.ts";

/** A leaf that is folded, and how long it took. */
export interface Tick {
  readonly leaf: LeafNumber;
  /** Working time since the tick before, ms; 0 where it was not timed. */
  readonly took: number;
}

/** A leaf that was skipped, torn or miscut. */
export interface LostLeaf {
  readonly leaf: LeafNumber;
  /** Ticks that were taken off with it: its own, and those of leaves whose marks it changed. */
  readonly cleared: readonly Tick[];
  /** Work on those leaves beside folding that went with them, by name. */
  readonly undone?: readonly string[] | undefined;
}

/** The first folded leaves pressed together at the flaps, mm. */
export interface Measured {
  readonly leaves: number;
  /** How many of them have a flap where they are pressed; left out where all have. */
  readonly flaps?: number | undefined;
  readonly thickness: number;
}

/** When something was glued, ms of the epoch. */
export interface Glued {
  readonly item: string;
  readonly at: number;
}

/** Work without a long break: an evening at the bench, see sitting.ts. */
export interface Sitting {
  /** When its first thing was done, ms of the epoch. */
  readonly began: number;
  /** The clock's `worked` then. */
  readonly worked: number;
  /** When she wants to stop, ms of the epoch. */
  readonly until?: number | undefined;
}

/** Working time; see pace.ts. */
export interface Clock {
  /** Time at work so far, ms. */
  readonly worked: number;
  /** When something was last done, ms of the epoch; 0 before anything was. */
  readonly seen: number;
  /** `worked` at the last tick. */
  readonly ticked: number;
}

/** How far a maker is with one kit on one book. Every change makes a new one. */
export interface Progress {
  readonly kit: string;
  readonly fit: string;
  /** Revision of the pattern (without lost leaves) that the work began with. */
  readonly revision: string;
  /** The leaf on the bench, or beside which other work lies there. */
  readonly at: LeafNumber;
  /** Name of the other work on the bench; undefined where the leaf lies there. */
  readonly item?: string | undefined;
  /** In book order. */
  readonly ticks: readonly Tick[];
  /** Prompts that were answered (`batch 3`, `check 49`, `measure`), and other work that is done (`step gauge`, `score 2 12-30`, `notch 41`, `tack 41`). */
  readonly passed: readonly string[];
  /** In the order in which they were lost. */
  readonly lost: readonly LostLeaf[];
  readonly measured: Measured | undefined;
  /** Work that was glued, by the name of its item; the last comes last. */
  readonly glued?: readonly Glued[] | undefined;
  /** The evening's work; undefined before anything was done. */
  readonly sitting?: Sitting | undefined;
  readonly clock: Clock;
}

/** The state before the first leaf. `lost` are leaves that the fit already leaves out. */
export function beginProgress(
  start: Pick<Progress, "kit" | "fit" | "revision" | "at"> & { readonly lost?: readonly LeafNumber[] },
): Progress {
  const { lost = [], ...rest } = start;
  return {
    ...rest,
    ticks: [],
    passed: [],
    lost: lost.map((leaf) => ({ leaf, cleared: [] })),
    measured: undefined,
    clock: { worked: 0, seen: 0, ticked: 0 },
  };
}

export function showLeaf(progress: Progress, at: LeafNumber): Progress {
  return { ...progress, at, item: undefined };
}

export function showPlace(progress: Progress, { leaf, item }: Place): Progress {
  return { ...progress, at: leaf, item: item?.name };
}

export function isTicked(progress: Progress, leaf: LeafNumber): boolean {
  return progress.ticks.some((tick) => tick.leaf === leaf);
}

/** Ticks a leaf; it took the working time since the last tick. */
export function tickLeaf(progress: Progress, leaf: LeafNumber): Progress {
  if (isTicked(progress, leaf)) return progress;
  const { worked, ticked } = progress.clock;
  return {
    ...progress,
    ticks: inOrder([...progress.ticks, { leaf, took: Math.max(0, worked - ticked) }]),
    clock: { ...progress.clock, ticked: worked },
  };
}

/** Ticks leaves that were folded away from this page, untimed. */
export function tickUntimed(progress: Progress, leaves: readonly LeafNumber[]): Progress {
  const fresh = leaves.filter((leaf) => !isTicked(progress, leaf)).map((leaf) => ({ leaf, took: 0 }));
  return { ...progress, ticks: inOrder([...progress.ticks, ...fresh]) };
}

export function untickLeaf(progress: Progress, leaf: LeafNumber): Progress {
  return { ...progress, ticks: progress.ticks.filter((tick) => tick.leaf !== leaf) };
}

/** Answers a prompt. */
export function passGate(progress: Progress, gate: string): Progress {
  return progress.passed.includes(gate) ? progress : { ...progress, passed: [...progress.passed, gate] };
}

export function measureBatch(progress: Progress, measured: Measured): Progress {
  return passGate({ ...progress, measured }, "measure");
}

/** Ticks in book order. */
export function inOrder(ticks: readonly Tick[]): Tick[] {
  return [...ticks].sort((a, b) => a.leaf - b.leaf);
}
