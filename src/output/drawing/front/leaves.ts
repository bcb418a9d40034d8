import { caliper } from "../../../core/book/book.ts";
import { leafNumber } from "../../../core/book/leaf-number.ts";
import { type Fan, leafAngle, leafRoot, leafTip } from "../../../core/fan/fan.ts";
import type { Notch } from "../../../core/light/light.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { boxPath } from "../path.ts";
import { insideTone, type Mood, paperTone } from "./tone.ts";

/** A stretch of one leaf as it ends toward the viewer, mm from head and fore-edge. */
export interface Reach {
  readonly from: number;
  readonly to: number;
  readonly depth: number;
}

export interface DrawnLeaf {
  readonly j: number;
  readonly reaches: readonly Reach[];
}

/** Leaves as the eye meets them: outer ones first, inner ones over them. Unfolded leaves reach to the fore-edge, lost ones are gone. */
export function leavesOutsideIn(pattern: Pattern, fan: Fan): DrawnLeaf[] {
  const folded = new Map(pattern.leaves.map((leaf) => [leaf.leaf - 1, leaf.spans]));
  const notches = new Map((pattern.pocket?.notches ?? []).map((notch) => [notch.leaf - 1, notch]));
  const depthOf = (level: number): number => pattern.levels[level - 1]!.depth;
  return Array.from({ length: pattern.book.leaves }, (_, j) => j)
    .filter((j) => !pattern.lostLeaves.includes(leafNumber(j + 1)))
    .map((j) => {
      const spans = folded.get(j)?.map((span) => ({ from: span.from, to: span.to, depth: depthOf(span.level) }));
      return { j, reaches: notched(spans ?? [{ from: 0, to: pattern.book.leafHeight, depth: 0 }], notches.get(j)) };
    })
    .sort((a, b) => Math.abs(leafAngle(fan, b.j)) - Math.abs(leafAngle(fan, a.j)));
}

function notched(reaches: readonly Reach[], notch: Notch | undefined): Reach[] {
  if (!notch) return [...reaches];
  return reaches.flatMap((reach) => {
    if (reach.to <= notch.from || reach.from >= notch.to || reach.depth >= notch.depth) return [reach];
    const cut = { from: Math.max(reach.from, notch.from), to: Math.min(reach.to, notch.to), depth: notch.depth };
    return [{ ...reach, to: cut.from }, cut, { ...reach, from: cut.to }].filter((part) => part.to > part.from);
  });
}

/** One leaf: its faces toward the spine, its folded tips, and the shadow that a prouder stretch above throws on a deeper one. */
export function drawLeaf(pattern: Pattern, fan: Fan, { j, reaches }: DrawnLeaf, mood: Mood): string {
  const angle = leafAngle(fan, j);
  const root = leafRoot(fan, j).x;
  const inward = angle < 0 ? 1 : -1;
  // In the middle two creases would meet and look like a slit: the innermost leaves lap over each other instead.
  const hasCrease = Math.abs(leafAngle(fan, j + inward)) < Math.abs(angle) - 1e-9;
  const light = (0.94 + 0.07 * Math.cos(angle + 0.5)) * grain(j);
  return reaches
    .map((reach, i) => {
      const share = depthShare(pattern, reach.depth);
      const tip = leafTip(fan, j, reach.depth).x;
      const edge = inward * foldWidth(pattern, fan, j, reach.depth);
      const face = strip(tip, root, reach, insideTone(share, 0.9 * light, mood));
      const outer = tip - edge / 2;
      const inner = outer + edge * (hasCrease ? 1 : 1 + LAP);
      const fold = strip(outer - LAP * edge, inner, reach, paperTone(share, light, mood));
      const crease = hasCrease
        ? strip(outer + edge * 0.62, outer + edge * 1.02, reach, paperTone(share, 0.91 * light, mood))
        : "";
      return face + fold + crease + dropShadow(reaches[i - 1], reach, outer, edge);
    })
    .join("");
}

/** How far a folded edge laps over the one outside it, a share of its width: no dark of the faces below shines through between two. */
const LAP = 0.1;

/** Paper is not even from leaf to leaf. What comes in a regular turn would beat with a screen's pixels, so this does not. */
function grain(j: number): number {
  return 1 - 0.03 * (((j * j * 37 + j * 101) % 127) / 126);
}

/** How wide a folded edge is seen: body and flap fill the room halfway to the neighbours' tips. */
export function foldWidth(pattern: Pattern, fan: Fan, j: number, depth: number): number {
  const other = j + 1 < pattern.book.leaves ? j + 1 : j - 1;
  const pitch = leafTip(fan, other, depth).x - leafTip(fan, j, depth).x;
  return Math.max(0.25, caliper(pattern.book) * 2.6, Math.abs(pitch));
}

/** 0 at the proudest level, 1 at the deepest; notches are deeper still but no darker. */
function depthShare(pattern: Pattern, depth: number): number {
  const front = pattern.levels[0]!.depth;
  const deepest = pattern.levels.at(-1)!.depth;
  return Math.min(1, Math.max(0, (depth - front) / Math.max(1, deepest - front)));
}

function dropShadow(above: Reach | undefined, reach: Reach, outer: number, edge: number): string {
  if (!above || above.depth >= reach.depth || above.depth === 0) return "";
  const length = Math.min(reach.to - reach.from, (reach.depth - above.depth) * 0.45);
  return strip(outer, outer + edge, { ...reach, to: reach.from + length }, "url(#drop)");
}

function strip(a: number, b: number, reach: Reach, fill: string): string {
  return `<path d="${stripPath(a, b, reach)}" fill="${fill}"/>`;
}

export function stripPath(a: number, b: number, reach: Pick<Reach, "from" | "to">): string {
  return boxPath(Math.min(a, b), reach.from, Math.abs(b - a), reach.to - reach.from);
}
