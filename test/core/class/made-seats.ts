import type { FittingSeat } from "../../../src/core/class/fit-seats.ts";
import type { KitClass, Session } from "../../../src/core/class/kit-class.ts";
import type { Kit } from "../../../src/core/kit/kit.ts";
import type { Pattern } from "../../../src/core/pattern/pattern.ts";
import type { Counts, Effort } from "../../../src/core/plan/effort.ts";
import { madeKit } from "../kit/made-kit.ts";
import { madePattern } from "../plan/made-pattern.ts";

export function session(minutes: number, aside = 0, changes: Partial<Session> = {}): Session {
  return { title: "", date: undefined, starts: undefined, minutes, aside, buffer: 0, ...changes };
}

/** A class by hand: nothing is ready, nothing is at hand, one session of an hour. */
export function madeClass(changes: Partial<KitClass> = {}): KitClass {
  return {
    slug: "made",
    title: "An evening",
    summary: "",
    date: "2027-02-04",
    announced: undefined,
    place: "Reading room",
    units: "mm",
    paper: "a4",
    kits: [],
    state: "fitted",
    seats: [],
    awaiting: [],
    spares: [],
    sessions: [session(60)],
    tools: {},
    pace: 1,
    ready: [],
    fittingShare: 0.25,
    sheets: [{ name: "A4", width: 210, height: 297 }],
    waste: 0,
    prices: {},
    pagePrice: undefined,
    sheetPrices: [],
    packs: {},
    currency: "EUR",
    stock: [],
    bring: [],
    brought: [],
    packet: "whole",
    ...changes,
  };
}

interface SeatChanges {
  readonly kit?: Kit;
  readonly pattern?: Pattern;
  readonly counts?: Partial<Counts>;
  readonly byStage?: Partial<Effort["byStage"]>;
  readonly pace?: number;
}

/** A seat that fits: nothing to do but what a test states. Its leaves take the kit's rates. */
export function madeSeat(number: number, changes: SeatChanges = {}): FittingSeat<Pattern> {
  const { kit = madeKit(), pattern = madePattern(), pace = 1 } = changes;
  const counts = { leaves: 0, scores: 0, marks: 0, cuts: 0, folds: 0, checks: 0, tacks: 0, notches: 0, parts: 0 };
  const byStage = { turn: 0, score: 0, mark: 0, cut: 0, fold: 0, check: 0, tack: 0, notch: 0, part: 0 };
  return {
    seat: { number, kit, book: {}, bookIn: "matter", refit: {}, pace },
    kit,
    pattern,
    findings: [],
    counts: { ...counts, ...changes.counts },
    effort: { minutes: 0, byStage: { ...byStage, ...changes.byStage } },
  };
}
