import type { PatternedKit } from "../pattern/patterned-kit.ts";
import { type Assessment, assess } from "./assessment.ts";
import { changesOf } from "./changes.ts";
import { isSlight, type Trouble, troublesOf } from "./trouble.ts";
import { seekWays, type WayOut } from "./ways.ts";

/** A trouble with at most three ways out, the best first; none of one that is too small to see. */
export interface TroubleWithWays {
  readonly trouble: Trouble;
  readonly ways: readonly WayOut[];
}

/** How well a picture can be made on its book, and what would help. */
export interface Makeability extends Assessment {
  readonly troubles: readonly TroubleWithWays[];
}

const known = new WeakMap<PatternedKit["pattern"], Makeability>();

/** Looks at a kit on its own book and tries ways out of each trouble; a pattern is looked at once. */
export function makeabilityOf({ kit, pattern, findings }: Omit<PatternedKit, "pictureNotes">): Makeability {
  const found = known.get(pattern);
  if (found) return found;
  const assessment = assess(kit, pattern, findings);
  const troubles = troublesOf(assessment);
  const waysOut = troubles.every(isSlight)
    ? () => []
    : seekWays(changesOf(kit, pattern), { doubts: findings, troubles, merged: pattern.merged.length });
  const made = {
    ...assessment,
    troubles: troubles.map((trouble) => ({ trouble, ways: isSlight(trouble) ? [] : waysOut(trouble) })),
  };
  known.set(pattern, made);
  return made;
}
