import type { FrameDrying } from "../core/class/drying.ts";
import type { KitClass, Session } from "../core/class/kit-class.ts";
import type { SeatPair } from "../core/class/pairs.ts";
import type { Stretch } from "../core/class/running-order.ts";
import type { SeatSchedule } from "../core/class/schedule.ts";
import { clockAt, minutesText } from "./clock.ts";
import { hoursText, timeText } from "./hours.ts";
import { listText } from "./lists.ts";
import * as say from "./messages.ts";
import { supplyName } from "./supplies.ts";

/** A minute of a session: `19:20`, or `50 min` where no time of day is stated. */
export function momentText({ starts }: Session, minute: number): string {
  return starts === undefined ? say.eveningMinute({ minute }) : clockAt(starts, minute);
}

/** What is done in a stretch of a session; the work after the pause goes on. */
export function stretchText({ kind }: Stretch, goesOn: boolean): string {
  switch (kind) {
    case "settle":
      return say.eveningSettle();
    case "work":
      return goesOn ? say.eveningWorkOn() : say.eveningWork();
    case "pause":
      return say.eveningPause();
    case "catch-up":
      return say.eveningCatchUp();
    case "tidy":
      return say.eveningTidy();
  }
}

/** When a frame is glued and its door hung, in a sentence or two. */
export function dryingText({ glued, hung, dries: minutes }: FrameDrying, sessions: readonly Session[]): string {
  const dries = timeText(minutes);
  if (glued === "home") return say.eveningGlueAtHome({ dries });
  const from = sessions[glued]!.title;
  if (hung === "home") return say.eveningHangAtHome({ from, dries });
  if (hung === glued) return say.eveningGlueAndHangOnce({ from, dries });
  return say.eveningGlueAndHang({ from, to: sessions[hung]!.title, dries });
}

/** Who sits beside whom, in a sentence. */
export function pairText({ helper, helped, ahead: minutes, from }: SeatPair, sessions: readonly Session[]): string {
  const ahead = hoursText(minutes);
  if (from === undefined) return say.eveningPair({ helper, helped, ahead });
  const session = sessions[from.session]!;
  return say.eveningPairFrom({
    helper,
    helped,
    ahead,
    session: session.title,
    time: momentText(session, from.minute),
  });
}

/** The tools that seats share: `4 × cutting mat and 2 × glue guns`. */
export function sharedToolsText(tools: KitClass["tools"]): string {
  return listText(
    (Object.entries(tools) as [keyof KitClass["tools"], number][]).map(([id, count]) =>
      say.eveningSharedTool({
        count,
        tool: id === "glueGun" ? say.eveningGlueGun({ count }) : supplyName({ id, own: undefined, quantity: count }),
      }),
    ),
  );
}

/** Who waits how long for a turn, or that nobody does. */
export function waitsText(schedules: readonly SeatSchedule[]): string {
  const waits = schedules.filter((one) => Math.round(one.waits) > 0);
  if (waits.length === 0) return say.eveningNoWaits();
  return say.eveningWaits({
    waits: listText(
      waits.map(({ fit, waits: minutes }) => say.eveningWait({ seat: fit.seat.number, minutes: minutesText(minutes) })),
    ),
  });
}
