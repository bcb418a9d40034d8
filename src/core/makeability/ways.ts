import { isGrave } from "../findings/doubt.ts";
import type { Doubt } from "../findings/doubt.ts";
import { computePattern } from "../pattern/compute.ts";
import { type Assessment, assess } from "./assessment.ts";
import type { AuthorChange, ChangedKit } from "./change.ts";
import { type Trouble, troublesOf } from "./trouble.ts";

/** A change that was tried and helps: the trouble's figure before and after; 0 where nothing of the trouble is left. */
export interface WayOut {
  readonly change: AuthorChange;
  readonly before: number;
  readonly after: number;
}

/** A change with what came of it. */
export interface Trial {
  readonly changed: ChangedKit;
  readonly troubles: readonly Trouble[];
}

/** The leaves of all patterns that are tried for a kit: a score of trials for an ordinary book, well under half a second. */
const MOST_LEAVES = 5000;

/** Most ways out of one trouble that are told. */
const MOST_WAYS = 3;

/** A way out takes away at least this share of a trouble. */
const HELPS = 0.2;

/**
 * Computes the changed kits, each whole with its light and window, and keeps those that fit, are no graver and have no new
 * kind of trouble. Stops where as many leaves are folded as a kit may ask for.
 */
export function tryChanges(
  changes: readonly ChangedKit[],
  known: { readonly doubts: readonly Doubt[]; readonly troubles: readonly Trouble[] },
): Trial[] {
  const grave = kindsOf(known.doubts.filter(isGrave));
  const kinds = kindsOf(known.troubles);
  let left = MOST_LEAVES;
  return changes.flatMap((changed): Trial[] => {
    left -= changed.kit.book.leaves;
    if (left < 0) return [];
    const result = computePattern(changed.kit);
    if (!result.fits) return [];
    if (result.findings.some((doubt) => isGrave(doubt) && !grave.has(doubt.kind))) return [];
    const assessment: Assessment = assess(changed.kit, result.pattern, result.findings);
    const troubles = troublesOf(assessment);
    return troubles.every(({ kind }) => kinds.has(kind)) ? [{ changed, troubles }] : [];
  });
}

/** The best ways out of a trouble, the best first: of each kind of change the mildest that ends it, or else the most helpful. */
export function waysOut(trouble: Trouble, trials: readonly Trial[]): WayOut[] {
  const best = new Map<AuthorChange["kind"], WayOut>();
  for (const { changed, troubles } of trials) {
    if (isCheat(trouble, changed.change)) continue;
    const way = { change: changed.change, before: trouble.figure, after: figureAfter(trouble, changed, troubles) };
    if (way.after > (1 - HELPS) * way.before) continue;
    const known = best.get(way.change.kind);
    if (!known || way.after < known.after) best.set(way.change.kind, way);
  }
  return [...best.values()].toSorted((a, b) => a.after - b.after).slice(0, MOST_WAYS);
}

/** A part that is too narrow is not made wider by smoothing it away. */
function isCheat(trouble: Trouble, change: AuthorChange): boolean {
  return trouble.kind === "narrow" && change.kind === "simplify";
}

function figureAfter(trouble: Trouble, { levelOf }: ChangedKit, troubles: readonly Trouble[]): number {
  const level = "level" in trouble && isOfLevel(trouble) ? levelOf(trouble.level) : undefined;
  const after = troubles.find(
    (one) => one.kind === trouble.kind && (level === undefined || ("level" in one && one.level === level)),
  );
  return after?.figure ?? 0;
}

function isOfLevel({ kind }: Trouble): boolean {
  return kind === "hidden" || kind === "out-of-reach";
}

function kindsOf<K extends string>(list: readonly { readonly kind: K }[]): Set<string> {
  return new Set(list.map(({ kind }) => kind));
}
