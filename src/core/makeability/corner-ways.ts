import { type Doubt, isGrave } from "../findings/doubt.ts";
import type { Kit } from "../kit/kit.ts";
import { once } from "../lazily.ts";
import type { FitResult } from "../pattern/compute.ts";
import { computeCorner } from "../pattern/compute-corner.ts";
import type { CornerPattern } from "../pattern/corner-pattern.ts";
import type { ChangedKit } from "./change.ts";
import { changesOf } from "./changes.ts";
import type { WayOut } from "./ways.ts";

/** What makes a picture hard to fold by corners. Each is told as a doubt, too. */
export const CORNER_TROUBLES = ["unseen", "merged", "turned", "springs-open"] as const;

/** `figure` is what a way out is measured by, the greater the worse. */
export interface CornerTrouble {
  /** Parts that no leaf shows; strips that are merged; leaves with a crease steeper than 45°; radians by which corners push the book open. */
  readonly kind: (typeof CORNER_TROUBLES)[number];
  readonly figure: number;
}

/** A trouble with at most three ways out, the best first. */
export interface CornerTroubleWithWays {
  readonly trouble: CornerTrouble;
  readonly ways: readonly WayOut[];
}

/** Changes that nothing hangs on where leaves are folded by corners. */
const IDLE: readonly WayOut["change"]["kind"][] = ["depths", "merge-levels"];

/** Leaves that are folded in all trials for a kit. */
const MOST_LEAVES = 4000;

/** Most ways out of one trouble that are told. */
const MOST_WAYS = 3;

/** A way out takes away at least this share of a trouble, and adds at most this share to another. */
const HELPS = 0.2;

/** What is hard in a kit that is folded by corners, with changes that were tried and help: of each kind the mildest that ends the trouble, or the one that helps most. */
export function cornerWays(kit: Kit, pattern: CornerPattern, doubts: readonly Doubt[]): CornerTroubleWithWays[] {
  const before = figuresOf(pattern);
  const trials = once(() => trialsOf(kit, pattern, doubts));
  return CORNER_TROUBLES.filter((kind) => before[kind] > 0).map((kind) => ({
    trouble: { kind, figure: before[kind] },
    ways: waysOut(kind, before, trials()),
  }));
}

type Figures = Readonly<Record<CornerTrouble["kind"], number>>;

function figuresOf({ corner, merged, fit }: CornerPattern): Figures {
  return {
    unseen: corner.turns.unseen,
    merged: merged.length,
    turned: corner.turned,
    "springs-open": Math.max(0, fit.restingOpening - fit.opening),
  };
}

interface Trial {
  readonly change: WayOut["change"];
  readonly figures: Figures;
}

/** Kits that are changed and still fit, with nothing grave that is new; stripes lie in the picture itself, and show where less of it is merged. */
function trialsOf(kit: Kit, pattern: CornerPattern, doubts: readonly Doubt[]): Trial[] {
  let left = MOST_LEAVES;
  return changesOf(kit, pattern).flatMap(({ change, kit: changed }: ChangedKit): Trial[] => {
    if (IDLE.includes(change.kind) || left < changed.book.leaves) return [];
    left -= changed.book.leaves;
    const result = computeCorner(changed);
    return result.fits && isNoGraver(result, doubts) ? [{ change, figures: figuresOf(result.pattern) }] : [];
  });
}

function isNoGraver(
  { findings }: Extract<FitResult<CornerPattern>, { readonly fits: true }>,
  before: readonly Doubt[],
): boolean {
  return findings.every(
    (doubt) => !isGrave(doubt) || doubt.kind === "striped" || before.some(({ kind }) => kind === doubt.kind),
  );
}

function waysOut(kind: CornerTrouble["kind"], before: Figures, trials: readonly Trial[]): WayOut[] {
  const best = new Map<WayOut["change"]["kind"], WayOut>();
  for (const { change, figures } of trials) {
    const others = CORNER_TROUBLES.filter((other) => other !== kind);
    if (others.some((other) => figures[other] > (1 + HELPS) * before[other])) continue;
    const way = { change, before: before[kind], after: figures[kind], ends: figures[kind] === 0 };
    const known = best.get(change.kind);
    const isBetter = !known || (!known.ends && way.after < known.after);
    if (way.after <= (1 - HELPS) * way.before && isBetter) best.set(change.kind, way);
  }
  return [...best.values()].toSorted((a, b) => a.after - b.after).slice(0, MOST_WAYS);
}
