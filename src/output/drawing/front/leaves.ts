import { caliper } from "../../../core/book/book.ts";
import { type Fan, leafAngle, leafTip } from "../../../core/fan/fan.ts";
import type { Notch } from "../../../core/light/light.ts";
import { leavesInBook, type Pattern } from "../../../core/pattern/pattern.ts";

/** A stretch of one leaf at one depth, mm from head and fore-edge. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly depth: number;
}

/** A stretch as it ends toward the viewer. */
export interface Reach extends Stretch {
  /** Where its tip stands, x in mm. */
  readonly tip: number;
  /** How wide its folded edge is seen, mm inward: negative in the half where inward is to the left. */
  readonly edge: number;
}

export interface DrawnLeaf {
  readonly j: number;
  readonly angle: number;
  readonly reaches: readonly Reach[];
}

/** Leaves as the eye meets them: outer ones first, inner ones over them. Unfolded leaves reach to the fore-edge, lost ones are gone. */
export function leavesOutsideIn(pattern: Pattern, fan: Fan): DrawnLeaf[] {
  const folded = new Map(pattern.leaves.map((leaf) => [leaf.leaf - 1, leaf.spans]));
  const notches = new Map((pattern.pocket?.notches ?? []).map((notch) => [notch.leaf - 1, notch]));
  const depthOf = (level: number): number => pattern.levels[level - 1]!.depth;
  return leavesInBook(pattern)
    .map((j) => {
      const angle = leafAngle(fan, j);
      const spans = folded.get(j)?.map((span) => ({ from: span.from, to: span.to, depth: depthOf(span.level) }));
      const stretches = notched(spans ?? [{ from: 0, to: pattern.book.leafHeight, depth: 0 }], notches.get(j));
      const reaches = stretches.map((stretch) => ({
        ...stretch,
        tip: leafTip(fan, j, stretch.depth).x,
        edge: foldWidth(pattern, fan, j, stretch.depth) * (angle < 0 ? 1 : -1),
      }));
      return { j, angle, reaches };
    })
    .sort((a, b) => Math.abs(b.angle) - Math.abs(a.angle));
}

function notched(reaches: readonly Stretch[], notch: Notch | undefined): Stretch[] {
  if (!notch) return [...reaches];
  return reaches.flatMap((reach) => {
    if (reach.to <= notch.from || reach.from >= notch.to || reach.depth >= notch.depth) return [reach];
    const cut = { from: Math.max(reach.from, notch.from), to: Math.min(reach.to, notch.to), depth: notch.depth };
    return [{ ...reach, to: cut.from }, cut, { ...reach, from: cut.to }].filter((part) => part.to > part.from);
  });
}

/** How wide a folded edge is seen: body and flap fill the room halfway to the neighbours' tips. */
function foldWidth(pattern: Pattern, fan: Fan, j: number, depth: number): number {
  const other = j + 1 < pattern.book.leaves ? j + 1 : j - 1;
  const pitch = leafTip(fan, other, depth).x - leafTip(fan, j, depth).x;
  return Math.max(0.25, caliper(pattern.book) * 2.6, Math.abs(pitch));
}
