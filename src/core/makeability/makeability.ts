import { lazily } from "../lazily.ts";
import { faceOfFitting } from "../pattern/face.ts";
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

/** Looks at a kit on its own book, and tries ways out of each trouble when they are asked for; a pattern is looked at once. */
export function makeabilityOf({ kit, pattern, findings }: Omit<PatternedKit, "pictureNotes">): Makeability {
  const found = known.get(pattern);
  if (found) return found;
  const assessment = assess(kit, { face: faceOfFitting(kit), pattern });
  const made = lazily<Pick<Makeability, "troubles">, Assessment>(
    { troubles: () => troublesWithWays(assessment, { kit, pattern, findings }) },
    assessment,
  );
  known.set(pattern, made);
  return made;
}

function troublesWithWays(
  assessment: Assessment,
  { kit, pattern, findings }: Omit<PatternedKit, "pictureNotes">,
): TroubleWithWays[] {
  const troubles = troublesOf(assessment);
  const waysOut = troubles.every(isSlight)
    ? () => []
    : seekWays(changesOf(kit, pattern), { doubts: findings, troubles, merged: pattern.merged.length });
  return troubles.map((trouble) => ({ trouble, ways: isSlight(trouble) ? [] : waysOut(trouble) }));
}
