import type { KitClass } from "../../../core/class/kit-class.ts";
import { seatPairs } from "../../../core/class/pairs.ts";
import { runningOrder } from "../../../core/class/running-order.ts";
import type { SeatSchedule } from "../../../core/class/schedule.ts";
import { momentText, pairText, sharedToolsText, stretchText, waitsText } from "../../../words/evening.ts";
import * as say from "../../../words/messages.ts";

/** The plan of a class's evenings as text. */
export interface EveningView {
  readonly orders: readonly SessionOrder[];
  /** Sentences on the tools that seats share; none where they share none. */
  readonly tools: readonly string[];
  /** Who sits beside whom, each a sentence. */
  readonly pairs: readonly string[];
}

/** A session's running order. */
export interface SessionOrder {
  readonly title: string;
  readonly rows: readonly { readonly time: string; readonly what: string }[];
}

export function eveningView(plan: KitClass, schedules: readonly SeatSchedule[]): EveningView {
  const shares = Object.keys(plan.tools).length > 0;
  return {
    orders: plan.sessions.map((session) => {
      const order = runningOrder(session);
      const first = order.findIndex(({ kind }) => kind === "work");
      return {
        title: session.title,
        rows: order.map((stretch, i) => ({
          time: momentText(session, stretch.from),
          what: stretchText(stretch, i > first),
        })),
      };
    }),
    tools: shares ? [say.eveningShared({ tools: sharedToolsText(plan.tools) }), waitsText(schedules)] : [],
    pairs: seatPairs(plan, schedules).map((pair) => pairText(pair, plan.sessions)),
  };
}
