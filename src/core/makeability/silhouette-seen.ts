import { leafAngle, leafRoot } from "../fan/fan.ts";
import { isFailure } from "../findings/outcome.ts";
import type { Stretch } from "../geometry/crossings.ts";
import { frontDepth } from "../kit/cut-kit.ts";
import { backgroundLevel, type Kit } from "../kit/kit.ts";
import { computePattern } from "../pattern/compute.ts";
import type { AnyPattern, CornerPattern } from "../pattern/corner-pattern.ts";
import { curveOfFace, faceOf, layOutPicture } from "../pattern/face.ts";
import { fanOf } from "../pattern/fan-of.ts";
import { leavesFromLeft } from "../pattern/pattern.ts";
import { columnsOnFront } from "./picture-columns.ts";
import { cornerProfile, cutProfile, type ProfileStretch, unfoldedProfile } from "./profile.ts";
import { type Fanned, fanOut, meetLeaves } from "./silhouette-ray.ts";

/** How much of a silhouette is seen from the front: intersection over union with its drawing, from 0 to 1. */
export interface SilhouetteSeen {
  /** Seen at edges on the front, where the drawing lies. */
  readonly edges: number;
  /** The same with sides of leaves that are seen between those edges and stand before the background: the eye takes them for the same area. */
  readonly paper: number;
}

/** How much of a kit's shown levels is seen, folded by corners and as the same kit cut; the latter undefined where it cannot be. */
export interface SeenBothWays {
  readonly folded: SilhouetteSeen;
  readonly cut: SilhouetteSeen | undefined;
}

/** What folding by corners costs a kit, turns and all; undefined for a piece that is read while walking round. It takes about as long as computing both patterns. */
export function seenBothWays(kit: Kit, pattern: CornerPattern): SeenBothWays | undefined {
  const before = known.get(pattern);
  if (before) return before.seen;
  const seen = lookBothWays(kit, pattern);
  known.set(pattern, { seen });
  return seen;
}

/** What was found of a pattern: several pages of a kit show it. */
const known = new WeakMap<CornerPattern, { readonly seen: SeenBothWays | undefined }>();

function lookBothWays(kit: Kit, pattern: CornerPattern): SeenBothWays | undefined {
  const folded = silhouetteSeen(kit, pattern);
  if (!folded) return undefined;
  const other: Kit = { ...kit, fit: { ...kit.fit, foldStyle: "single" } };
  const result = computePattern(other);
  return { folded, cut: result.fits ? silhouetteSeen(other, result.pattern) : undefined };
}

/** How much of the levels is seen that the kit shows where it is folded by corners, in a pattern of either way: rays through the middles of columns. */
export function silhouetteSeen(kit: Kit, pattern: AnyPattern): SilhouetteSeen | undefined {
  const layout = layOutPicture(kit);
  if (kit.fit.view === "along" || isFailure(layout)) return undefined;
  const face = faceOf(kit, layout.value);
  const curve = curveOfFace(kit, face);
  const { levels } = kit.fit.corner;
  const front = kit.book.leafWidth - frontDepth(kit);
  const ground = kit.book.leafWidth - kit.levels[backgroundLevel(kit.levels) - 1]!.depth;
  const fanned = standProfiles(kit, pattern);
  const sums = { wanted: 0, edges: 0, paper: 0, edgesRight: 0, paperRight: 0 };
  for (const { across, runs } of columnsOnFront(kit, face)) {
    const wanted = runs.filter(({ level }) => levels.includes(level));
    const met = meetLeaves(fanned, curve.atAcross(across).x, front);
    const edges = met.filter(({ isEdge }) => isEdge);
    const paper = met.filter(({ radius, isEdge }) => isEdge || radius > ground);
    sums.wanted += lengthOf(wanted);
    sums.edges += lengthOf(edges);
    sums.paper += lengthOf(paper);
    sums.edgesRight += overlapOf(wanted, edges);
    sums.paperRight += overlapOf(wanted, paper);
  }
  const share = (right: number, seen: number): number => right / Math.max(Number.MIN_VALUE, sums.wanted + seen - right);
  return { edges: share(sums.edgesRight, sums.edges), paper: share(sums.paperRight, sums.paper) };
}

/** All leaves that stand in the opened book, with what they show. */
function standProfiles({ fit, book }: Kit, pattern: AnyPattern): Fanned {
  const fan = fanOf(pattern);
  const profiles = new Map<number, readonly ProfileStretch[]>(
    pattern.corner
      ? pattern.leaves.map((leaf) => [leaf.leaf, cornerProfile(leaf.fold, book)])
      : pattern.leaves.map((leaf) => [leaf.leaf, cutProfile(leaf.spans, pattern.levels, book, fit.corner.levels)]),
  );
  return fanOut(
    leavesFromLeft(pattern).map((j) => ({
      root: leafRoot(fan, j).x,
      lean: Math.sin(leafAngle(fan, j)),
      profile: profiles.get(j + 1) ?? unfoldedProfile(book),
    })),
  );
}

function lengthOf(stretches: readonly Stretch[]): number {
  return stretches.reduce((sum, { from, to }) => sum + to - from, 0);
}

/** Length that two lists of stretches have in common; neither overlaps itself. */
function overlapOf(a: readonly Stretch[], b: readonly Stretch[]): number {
  let sum = 0;
  for (const one of a)
    for (const other of b) sum += Math.max(0, Math.min(one.to, other.to) - Math.max(one.from, other.from));
  return sum;
}
