import { type Doubt, isGrave } from "../findings/doubt.ts";
import type { Kit } from "../kit/kit.ts";
import { once } from "../lazily.ts";
import { computePattern, type FitResult } from "../pattern/compute.ts";
import { type Assessment, assess } from "./assessment.ts";
import type { AuthorChange, ChangedKit } from "./change.ts";
import { aroundKind, figureOf, hasWorse, type Kinds, type Trouble, troublesOfKind } from "./trouble.ts";

/** A change that was tried and helps: the trouble's figure before and after it. */
export interface WayOut {
  readonly change: AuthorChange;
  readonly before: number;
  readonly after: number;
  /** Whether the trouble is gone with it; what is left is too little to be one. */
  readonly ends: boolean;
}

/** A changed kit whose leaves were folded, without light and window. */
interface Trial {
  readonly changed: ChangedKit;
  readonly assessment: Assessment;
  /** Whether one of some kinds of trouble is new, or clearly greater than before. */
  readonly isWorse: (kinds: Kinds) => boolean;
  /** Whether it fits with light and window, too, and is no graver. */
  readonly isWhole: () => boolean;
}

/** What is known of the kit as it stands. */
export interface Known {
  readonly doubts: readonly Doubt[];
  readonly troubles: readonly Trouble[];
  /** Strips that are merged. */
  readonly merged: number;
}

/** Leaves that are folded in all trials for a kit: a score of trials for an ordinary book, about half a second. */
const MOST_LEAVES = 5000;

/** With so many corners more in its picture, or merged strips more on a leaf, a trial takes as long again; of strips it takes the square. */
const CORNERS = 20_000;
const STRIPS = 10;

/** Most ways out of one trouble that are told. */
const MOST_WAYS = 3;

/** A way out takes away at least this share of a trouble, and adds at most this share to another. */
const HELPS = 0.2;

/** A change that costs a level takes away more than this share of it. */
const HELPS_FOR_LEVEL = 0.5;

/**
 * Tries changes on a kit and gives a function that tells the best ways out of a trouble, the best first; a change that costs
 * a level comes last. Of each kind of change it is the mildest that ends the trouble, or else the one that helps most. Only
 * what fits is told, light and window included, and what neither makes anything grave nor another trouble worse.
 */
export function seekWays(changes: readonly ChangedKit[], known: Known): (trouble: Trouble) => WayOut[] {
  const trials = foldAll(changes, known);
  return (trouble) => {
    const best = new Map<AuthorChange["kind"], WayOut>();
    const [quicker, slower] = aroundKind(trouble.kind);
    for (const trial of trials) {
      if (trial.isWorse(quicker)) continue;
      const way = wayOf(trouble, trial);
      if (isIdle(trouble, way)) continue;
      const other = best.get(way.change.kind);
      const isBest = !other || (!other.ends && way.after < other.after);
      if (isBest && !trial.isWorse(slower) && trial.isWhole()) best.set(way.change.kind, way);
    }
    return [...best.values()]
      .toSorted((a, b) => costsLevel(a) - costsLevel(b) || a.after - b.after)
      .slice(0, MOST_WAYS);
  };
}

function foldAll(changes: readonly ChangedKit[], { doubts, troubles: before, merged }: Known): Trial[] {
  const grave = new Set(doubts.filter(isGrave).map(({ kind }) => kind));
  const isNoGraver = (result: FitResult): boolean =>
    result.fits && result.findings.every((doubt) => !isGrave(doubt) || grave.has(doubt.kind));
  let left = MOST_LEAVES;
  return changes.flatMap((changed): Trial[] => {
    left -= workOf(changed.kit, merged);
    if (left < 0) return [];
    const { kit: whole } = changed;
    const kit = { ...whole, light: undefined, insert: undefined };
    const result = computePattern(kit);
    if (!result.fits) return [];
    const assessment = assess(kit, result.pattern, result.findings);
    return [
      {
        changed,
        assessment,
        isWorse: (kinds) => hasWorse(assessment, kinds, 1 + HELPS, before),
        isWhole: once(() => isNoGraver(whole.light || whole.insert ? computePattern(whole) : result)),
      },
    ];
  });
}

/** How much it is to fold a kit's leaves, as a count of leaves with a plain picture. */
function workOf({ book, picture }: Kit, merged: number): number {
  const corners = picture.shapes.reduce(
    (sum, { rings }) => sum + rings.reduce((all, { length }) => all + length, 0),
    0,
  );
  return book.leaves * (1 + corners / CORNERS + (merged / book.leaves / STRIPS) ** 2);
}

function wayOf(trouble: Trouble, { changed, assessment }: Trial): WayOut {
  const level = "level" in trouble ? changed.levelOf(trouble.level) : undefined;
  return {
    change: changed.change,
    before: trouble.figure,
    after: figureOf(assessment, trouble.kind, level),
    ends: !troublesOfKind(assessment, trouble.kind).some((one) => !("level" in one) || one.level === level),
  };
}

/** Whether a change does too little, or is beside the point: a narrow part smoothed away, levels merged that are other ones. */
function isIdle(trouble: Trouble, { change, before, after }: WayOut): boolean {
  if (after > (1 - HELPS) * before) return true;
  if (change.kind === "simplify") return trouble.kind === "narrow";
  if (change.kind !== "merge-levels") return false;
  if (after >= (1 - HELPS_FOR_LEVEL) * before) return true;
  return "level" in trouble && change.level !== trouble.level && change.into !== trouble.level;
}

function costsLevel({ change }: WayOut): number {
  return change.kind === "merge-levels" ? 1 : 0;
}
