import { type Doubt, isGrave } from "../findings/doubt.ts";
import type { Kit } from "../kit/kit.ts";
import { computePattern } from "../pattern/compute.ts";
import { type Assessment, assess } from "./assessment.ts";
import type { AuthorChange, ChangedKit } from "./change.ts";
import { figureOf, type Trouble, troublesOf } from "./trouble.ts";

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
  readonly troubles: readonly Trouble[];
}

interface Tried extends WayOut {
  readonly kit: Kit;
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
  const whole = wholeFits(known.doubts);
  return (trouble) => {
    const best = new Map<AuthorChange["kind"], Tried>();
    for (const trial of trials) {
      const way = wayOf(trouble, trial);
      if (isIdle(trouble, way)) continue;
      const other = best.get(way.change.kind);
      if (!other || (!other.ends && way.after < other.after)) if (whole(way.kit)) best.set(way.change.kind, way);
    }
    return [...best.values()]
      .toSorted((a, b) => costsLevel(a) - costsLevel(b) || a.after - b.after)
      .slice(0, MOST_WAYS)
      .map(({ kit: _, ...way }) => way);
  };
}

function foldAll(changes: readonly ChangedKit[], { troubles: before, merged }: Known): Trial[] {
  let left = MOST_LEAVES;
  return changes.flatMap((changed): Trial[] => {
    left -= workOf(changed.kit, merged);
    if (left < 0) return [];
    const kit = { ...changed.kit, light: undefined, insert: undefined };
    const result = computePattern(kit);
    if (!result.fits) return [];
    const assessment = assess(kit, result.pattern, result.findings);
    const troubles = troublesOf(assessment);
    return worsens(troubles, before) ? [] : [{ changed, assessment, troubles }];
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

/** Whether a kit is a kit of its own, light and window included, and no graver; each kit is computed when it is first asked for. */
function wholeFits(doubts: readonly Doubt[]): (kit: Kit) => boolean {
  const grave = new Set(doubts.filter(isGrave).map(({ kind }) => kind));
  const known = new Map<Kit, boolean>();
  const fits = (kit: Kit): boolean => {
    const result = computePattern(kit);
    return result.fits && result.findings.every((doubt) => !isGrave(doubt) || grave.has(doubt.kind));
  };
  return (kit) => {
    const one = known.get(kit) ?? fits(kit);
    known.set(kit, one);
    return one;
  };
}

/** Whether some kind of trouble is new, or clearly greater than before. */
function worsens(after: readonly Trouble[], before: readonly Trouble[]): boolean {
  const sum = (list: readonly Trouble[], kind: Trouble["kind"]): number =>
    list.filter((one) => one.kind === kind).reduce((total, { figure }) => total + figure, 0);
  return after.some(({ kind }) => sum(after, kind) > (1 + HELPS) * sum(before, kind));
}

function wayOf(trouble: Trouble, { changed, assessment, troubles }: Trial): Tried {
  const level = "level" in trouble ? changed.levelOf(trouble.level) : undefined;
  return {
    change: changed.change,
    before: trouble.figure,
    after: figureOf(assessment, trouble.kind, level),
    ends: !troubles.some((one) => one.kind === trouble.kind && (!("level" in one) || one.level === level)),
    kit: changed.kit,
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
