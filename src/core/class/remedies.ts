import type { Kit } from "../kit/kit.ts";
import type { KitClass } from "./kit-class.ts";
import { type SeatSchedule, workMinutes } from "./schedule.ts";

/** What helps a seat that the sessions are too short for. Minutes at the seat's pace; `missing` is what it still lacks, 0 where it is enough. */
export type Remedy =
  | {
      /** Leaves that are left after the last session, and whether the score lines are, too. */
      readonly kind: "leaves-at-home";
      readonly leaves: number;
      readonly scores: boolean;
      readonly minutes: number;
    }
  | { readonly kind: "window-at-home"; readonly minutes: number }
  | { readonly kind: "scores-before"; readonly saves: number; readonly missing: number }
  | { readonly kind: "parts-before"; readonly saves: number; readonly missing: number }
  | { readonly kind: "both-before"; readonly missing: number }
  | { readonly kind: "shorter-kit"; readonly kit: Kit }
  /** Sessions like the last one that would do. */
  | { readonly kind: "more-sessions"; readonly sessions: number };

/** What can be done for a seat that does not finish, the surest first; nothing where it does. */
export function remediesFor(plan: Pick<KitClass, "sessions">, schedule: SeatSchedule): Remedy[] {
  const { short, shorterKits } = schedule;
  if (short === 0) return [];
  return [
    atHome(schedule),
    ...beforehand(schedule),
    ...shorterKits.map((kit): Remedy => ({ kind: "shorter-kit", kit })),
    { kind: "more-sessions", sessions: Math.ceil(short / workMinutes(plan).at(-1)!) },
  ];
}

function atHome({ fit, reaches, short: minutes }: SeatSchedule): Remedy {
  const last = reaches.at(-1)!;
  const leaves = fit.pattern.leaves.length - last.leaves;
  return leaves > 0
    ? { kind: "leaves-at-home", leaves, scores: last.at === "scores", minutes }
    : { kind: "window-at-home", minutes };
}

function beforehand({ saves, short }: SeatSchedule): Remedy[] {
  const { scores, parts } = saves;
  const missing = (saved: number): number => Math.max(0, short - saved);
  return [
    ...(scores > 0 ? [{ kind: "scores-before", saves: scores, missing: missing(scores) } as const] : []),
    ...(parts > 0 ? [{ kind: "parts-before", saves: parts, missing: missing(parts) } as const] : []),
    ...(scores > 0 && parts > 0 ? [{ kind: "both-before", missing: missing(scores + parts) } as const] : []),
  ];
}
