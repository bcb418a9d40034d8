import { cellEdges, type Fan, readingPositions, tip } from "../../oracle/fan.ts";
import type { PublishedWindow } from "./published-window.ts";

/** The opened book, from published figures alone. */
export function fanOf(pattern: PublishedWindow): Fan {
  const { leafWidth, blockThickness, leaves, direction } = pattern.book;
  const { opening, spine } = pattern.fit;
  return { leafWidth, blockThickness, leaves, opening, spine, direction };
}

/** Tips of the front level from the viewer's left to right. */
export function frontTips(pattern: PublishedWindow): { readonly x: number; readonly z: number }[] {
  const { firstLeaf, lastLeaf } = pattern.fit;
  const depth = pattern.levels[0]!.depth;
  const tips = Array.from({ length: lastLeaf - firstLeaf + 1 }, (_, i) => tip(fanOf(pattern), firstLeaf + i, depth));
  return tips.sort((a, b) => a.x - b.x);
}

/** The picture's left and right edge as seen from the front. */
export function pictureSides(pattern: PublishedWindow): { readonly left: number; readonly right: number } {
  const { firstLeaf, lastLeaf } = pattern.fit;
  const positions = readingPositions(fanOf(pattern), firstLeaf, lastLeaf, pattern.levels[0]!.depth, "front");
  const edges = cellEdges(positions);
  return { left: edges[0]!, right: edges.at(-1)! };
}

/** How near the front the polyline through the tips stands at x. */
export function frontAt(pattern: PublishedWindow, x: number): number {
  const tips = frontTips(pattern);
  const i = Math.min(
    tips.length - 2,
    Math.max(
      0,
      tips.findLastIndex((one) => one.x <= x),
    ),
  );
  const [a, b] = [tips[i]!, tips[i + 1]!];
  return a.z + ((x - a.x) / (b.x - a.x)) * (b.z - a.z);
}

/** How far a leaf's paper reaches from its root at a height: to the fold of the span there, or to the fore-edge of an unfolded leaf. */
export function reachAt(pattern: PublishedWindow, leaf: number, height: number): number {
  const folded = pattern.leaves.find((one) => one.leaf === leaf);
  const span = folded?.spans.find((one) => height >= one.from && height < one.to);
  if (folded && !span) throw new Error(`leaf ${leaf} has no span at ${height}`);
  return pattern.book.leafWidth - (span ? pattern.levels[span.level - 1]!.depth : 0);
}

/** The nearest that paper of a leaf up to `reach` comes to an upright axis. */
export function nearestPaper(
  pattern: PublishedWindow,
  leaf: number,
  reach: number,
  axis: { readonly x: number; readonly z: number },
): number {
  const fan = fanOf(pattern);
  const away = (radius: number): number => {
    const at = tip(fan, leaf, fan.leafWidth - radius);
    return Math.hypot(at.x - axis.x, at.z - axis.z);
  };
  let least = away(reach);
  for (let radius = 0; radius < reach; radius += 0.1) least = Math.min(least, away(radius));
  return least;
}
