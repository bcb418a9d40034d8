import type { KitClass } from "./kit-class.ts";
import { minuteOfWork } from "./running-order.ts";
import { endsOf, type SeatSchedule } from "./schedule.ts";
import { isKnifeFree } from "./seat-way.ts";

/** Two seats side by side: one that is done early beside one that needs longer. */
export interface SeatPair {
  readonly helper: number;
  readonly helped: number;
  /** Minutes that the helper is done before the other. */
  readonly ahead: number;
  /** When the helper is done: the session, from 0, and its minute; undefined where it is not done in class. */
  readonly from: { readonly session: number; readonly minute: number } | undefined;
}

/** Less than this apart, neither waits for the other, minutes. */
const NOTICEABLE = 10;

/**
 * The quickest beside the slowest, the next quickest beside the next slowest; those that are about as quick sit anywhere. Who
 * works without a knife neither sits beside one nor helps with it.
 */
export function seatPairs(plan: Pick<KitClass, "sessions">, schedules: readonly SeatSchedule[]): SeatPair[] {
  const { cut = [], folded = [] } = Object.groupBy(schedules, ({ fit }) => (isKnifeFree(fit.seat) ? "folded" : "cut"));
  return [cut, folded].flatMap((some) => pairsAmong(plan, some));
}

function pairsAmong(plan: Pick<KitClass, "sessions">, schedules: readonly SeatSchedule[]): SeatPair[] {
  const order = schedules.toSorted((a, b) => doneAt(a) - doneAt(b) || numberOf(a) - numberOf(b));
  const half = Math.floor(order.length / 2);
  return order.slice(0, half).flatMap((helper, i) => {
    const helped = order.at(-1 - i)!;
    const ahead = doneAt(helped) - doneAt(helper);
    if (ahead < NOTICEABLE) return [];
    return [{ helper: numberOf(helper), helped: numberOf(helped), ahead, from: momentOf(plan, doneAt(helper)) }];
  });
}

function doneAt({ minutes, waits }: SeatSchedule): number {
  return minutes + waits;
}

function numberOf({ fit }: SeatSchedule): number {
  return fit.seat.number;
}

/** The session and its minute at which so many minutes of work are done. */
function momentOf(plan: Pick<KitClass, "sessions">, at: number): SeatPair["from"] {
  const ends = endsOf(plan);
  const session = ends.findIndex((end) => at <= end);
  if (session < 0) return undefined;
  return { session, minute: Math.ceil(minuteOfWork(plan.sessions[session]!, at - (ends[session - 1] ?? 0))) };
}
