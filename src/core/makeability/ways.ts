import { type Doubt, isGrave } from "../findings/doubt.ts";
import { isFailure } from "../findings/outcome.ts";
import type { Kit } from "../kit/kit.ts";
import { lazily, once } from "../lazily.ts";
import { closePattern, type FitResult, openPattern } from "../pattern/compute.ts";
import { faceOf, layOutPicture } from "../pattern/face.ts";
import { type Assessment, assess } from "./assessment.ts";
import type { AuthorChange, ChangedKit } from "./change.ts";
import { aroundKind, figureOf, hasWorse, isEnded, type Kinds, type Trouble } from "./trouble.ts";

/** A change that was tried and helps: the trouble's figure before and after it. */
export interface WayOut {
  readonly change: AuthorChange;
  readonly before: number;
  readonly after: number;
  /** Whether the trouble is gone with it; what is left is too little to be one. */
  readonly ends: boolean;
}

/** A changed kit that is laid out on its book. Its leaves are folded, without light and window, when that is first asked for. */
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
  const trials = affordable(changes, known.merged).flatMap((changed) => tryOut(changed, known) ?? []);
  const kinds = [...Map.groupBy(trials, ({ changed }) => changed.change.kind).values()];
  return (trouble) =>
    kinds
      .flatMap((ofKind) => bestWay(trouble, ofKind) ?? [])
      .toSorted((a, b) => costsLevel(a) - costsLevel(b) || a.after - b.after)
      .slice(0, MOST_WAYS);
}

/** Of changes of one kind, the mildest first. What takes long is asked last, and of as few as can be. */
function bestWay(trouble: Trouble, trials: readonly Trial[]): WayOut | undefined {
  const helping: (readonly [WayOut, Trial])[] = [];
  const [quicker, slower] = aroundKind(trouble.kind);
  for (const trial of trials) {
    if (trial.isWorse(quicker)) continue;
    const way = wayOf(trouble, trial);
    if (!way || trial.isWorse(slower)) continue;
    if (!way.ends) helping.push([way, trial]);
    else if (trial.isWhole()) return way;
  }
  return helping.toSorted(([a], [b]) => a.after - b.after).find(([, trial]) => trial.isWhole())?.[0];
}

/** The changes whose leaves may be folded. */
function affordable(changes: readonly ChangedKit[], merged: number): ChangedKit[] {
  let left = MOST_LEAVES;
  return changes.filter(({ kit }) => {
    left -= workOf(kit, merged);
    return left >= 0;
  });
}

/** Lays a changed kit out; undefined where its book does not carry it. */
function tryOut(changed: ChangedKit, { doubts, troubles }: Known): Trial | undefined {
  const { kit } = changed;
  const layout = layOutPicture(kit);
  if (isFailure(layout)) return undefined;
  const face = faceOf(kit, layout.value);
  const onBook = lazily({ pattern: () => openPattern(kit, face) }, { face });
  const assessment = assess(kit, onBook);
  return {
    changed,
    assessment,
    isWorse: (kinds) => hasWorse(assessment, kinds, 1 + HELPS, troubles),
    isWhole: once(() => isNoGraver(closePattern(kit, face, onBook.pattern), doubts)),
  };
}

function isNoGraver(result: FitResult, before: readonly Doubt[]): boolean {
  const isNew = (doubt: Doubt): boolean => isGrave(doubt) && !before.some(({ kind }) => kind === doubt.kind);
  return result.fits && !result.findings.some(isNew);
}

/** How much it is to fold a kit's leaves, as a count of leaves with a plain picture. */
function workOf({ book, picture }: Kit, merged: number): number {
  const corners = picture.shapes.reduce(
    (sum, { rings }) => sum + rings.reduce((all, { length }) => all + length, 0),
    0,
  );
  return book.leaves * (1 + corners / CORNERS + (merged / book.leaves / STRIPS) ** 2);
}

/** What a trial does to a trouble; undefined where that is too little, or beside the point. */
function wayOf(trouble: Trouble, { changed, assessment }: Trial): WayOut | undefined {
  const level = "level" in trouble ? changed.levelOf(trouble.level) : undefined;
  const [before, after] = [trouble.figure, figureOf(assessment, trouble.kind, level)];
  const { change } = changed;
  if (isIdle(trouble, { change, before, after })) return undefined;
  return { change, before, after, ends: isEnded(assessment, trouble.kind, level) };
}

/** Whether a change does too little, or is beside the point: a narrow part smoothed away, levels merged that are other ones. */
function isIdle(trouble: Trouble, { change, before, after }: Omit<WayOut, "ends">): boolean {
  if (after > (1 - HELPS) * before) return true;
  if (change.kind === "simplify") return trouble.kind === "narrow";
  if (change.kind !== "merge-levels") return false;
  if (after >= (1 - HELPS_FOR_LEVEL) * before) return true;
  return "level" in trouble && change.level !== trouble.level && change.into !== trouble.level;
}

function costsLevel({ change }: WayOut): number {
  return change.kind === "merge-levels" ? 1 : 0;
}
