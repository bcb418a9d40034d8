import { windowWork } from "../steps/window-work.ts";
import { isCutting } from "./fit-seats.ts";
import type { KitClass, Session } from "./kit-class.ts";
import { minuteOfWork } from "./running-order.ts";
import { endsOf, type SeatSchedule } from "./schedule.ts";

/** Where a seat's frame is glued and where, dry, its door is hung: sessions counted from 0; `home` after the last one. */
export interface FrameDrying {
  readonly glued: number | "home";
  readonly hung: number | "home";
  /** Minutes that the frame lies still. */
  readonly dries: number;
}

const DAY = 24 * 60;

/**
 * When a seat glues its frame and may hang its door. The window's steps after cutting take equal parts of their time, as no
 * rate knows them singly. Undefined where nothing has to dry.
 */
export function frameDrying(
  plan: Pick<KitClass, "sessions" | "ready" | "fittingShare">,
  { fit, windowAt }: SeatSchedule,
): FrameDrying | undefined {
  if (!isCutting(fit)) return undefined;
  const steps = windowWork(fit.kit, fit.pattern).filter(({ id }) => id !== "cut" && id !== "light");
  const frame = steps.findIndex(({ id }) => id === "frame");
  const dries = steps[frame]?.dries ?? 0;
  if (windowAt === undefined || dries === 0) return undefined;
  const whole = fit.effort.byStage.part * fit.seat.pace;
  const cutting = plan.ready.includes("parts") ? 0 : whole * (1 - plan.fittingShare);
  const at = windowAt + cutting + (whole * plan.fittingShare * (frame + 1)) / steps.length;
  const ends = endsOf(plan);
  const glued = ends.findIndex((end) => at <= end);
  if (glued < 0) return { glued: "home", hung: "home", dries };
  const begun = plan.sessions.map((session, i) => beginOf(plan.sessions, session, i));
  const wet = begun[glued]! + minuteOfWork(plan.sessions[glued]!, at - (ends[glued - 1] ?? 0));
  const hung = plan.sessions.findIndex(
    ({ minutes, buffer }, i) => i >= glued && wet + dries <= begun[i]! + (i === glued ? minutes - buffer : 0),
  );
  return { glued, hung: hung < 0 ? "home" : hung, dries };
}

/** Minutes from the first session's midnight to a session's beginning; a session without a date is on the day after. */
function beginOf(sessions: readonly Session[], { date, starts }: Session, i: number): number {
  const first = sessions[0]!.date;
  const days = date !== undefined && first !== undefined ? (Date.parse(date) - Date.parse(first)) / (DAY * 60_000) : i;
  return days * DAY + clockMinutes(starts ?? sessions.find((one) => one.starts !== undefined)?.starts ?? "00:00");
}

/** Minutes since midnight of a time of day: `18:30`. */
function clockMinutes(time: string): number {
  const [hours, minutes] = time.split(":").map(Number);
  return hours! * 60 + minutes!;
}
