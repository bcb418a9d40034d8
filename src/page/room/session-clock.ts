import type { Stretch } from "../../core/class/running-order.ts";

/** What a session is in the middle of at a moment. */
export type Moment =
  | { readonly at: "before"; readonly begins: number }
  | { readonly at: "stretch"; readonly index: number; readonly until: number }
  | { readonly at: "after" };

const MINUTE = 60_000;

/** When a session begins by its stated day and time, where the reader is, ms; undefined where either is not stated. */
export function statedBeginning(date: string | undefined, starts: string | undefined): number | undefined {
  return date === undefined || starts === undefined ? undefined : Date.parse(`${date}T${starts}`);
}

/** Where a session stands that began at `begun`; both times are ms of the epoch. */
export function momentOf(order: readonly Stretch[], begun: number, now: number): Moment {
  const minute = (now - begun) / MINUTE;
  if (minute < 0) return { at: "before", begins: begun };
  const index = order.findIndex(({ until }) => minute < until);
  return index < 0 ? { at: "after" } : { at: "stretch", index, until: begun + order[index]!.until * MINUTE };
}

/** Whose targets count: the pause's until it begins, where there is one, then those of the end. */
export function nextTarget(order: readonly Stretch[], moment: Moment | undefined): "pause" | "end" {
  const pause = order.findIndex(({ kind }) => kind === "pause");
  const now = moment?.at === "stretch" ? moment.index : moment?.at === "after" ? order.length : -1;
  return now < pause ? "pause" : "end";
}
