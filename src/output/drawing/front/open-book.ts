import { type Fan, leafAngle, leafRoot, leafTip } from "../../../core/fan/fan.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { shortStrip } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import { type DrawnLeaf, foldWidth, leavesOutsideIn, type Reach } from "./leaves.ts";
import { insideTone, type Mood, paperTone } from "./tone.ts";

/** How far a folded edge laps over the one outside it, a share of its width: no dark of the faces below shines through between two. */
const LAP = 0.1;

/** Where a crease runs on a folded edge, in shares of its width from outside, and how much light it takes. */
const CREASE = { from: 0.62, to: 1.02, dark: 0.09 } as const;

/** A reach as it is seen: where its tip stands, and how wide its folded edge is, mm, negative at the viewer's right. */
interface SeenReach extends Reach {
  readonly tip: number;
  readonly edge: number;
}

interface SeenLeaf {
  readonly j: number;
  /** 1 where the middle of the book lies to the right, −1 to the left. */
  readonly inward: number;
  readonly reaches: readonly SeenReach[];
}

/** All leaves of the opened book, outer ones first: each hides what lies between its tips and the spine. */
export function openBook(pattern: Pattern, fan: Fan, mood: Mood): string {
  const next = new Map<number, SeenLeaf>();
  const drawn = leavesOutsideIn(pattern, fan)
    .toReversed()
    .map((one) => {
      const leaf = seenLeaf(pattern, fan, one);
      const text = drawLeaf(pattern, fan, leaf, next.get(leaf.inward), mood);
      next.set(leaf.inward, leaf);
      return text;
    });
  return ground(pattern, fan, mood) + drawn.reverse().join("");
}

/** The dark of the book behind all leaves, as far as all of them reach: where two strips meet within a pixel, no cloth of the boards shines through. */
function ground({ book, levels }: Pattern, fan: Fan, mood: Mood): string {
  const depth = levels.at(-1)!.depth;
  const sides = [leafTip(fan, 0, depth).x, leafTip(fan, book.leaves - 1, depth).x] as const;
  return tag("path", { d: shortStrip(sides, 0, book.leafHeight), fill: insideTone(1, 0.9, mood) });
}

function seenLeaf(pattern: Pattern, fan: Fan, { j, reaches }: DrawnLeaf): SeenLeaf {
  const inward = leafAngle(fan, j) < 0 ? 1 : -1;
  const seen = reaches.map((reach) => ({
    ...reach,
    tip: leafTip(fan, j, reach.depth).x,
    edge: inward * foldWidth(pattern, fan, j, reach.depth),
  }));
  return { j, inward, reaches: seen };
}

/** One leaf: its faces toward the spine, its folded tips with their creases, and the shadow that a prouder stretch above throws on a deeper one. */
function drawLeaf(pattern: Pattern, fan: Fan, leaf: SeenLeaf, next: SeenLeaf | undefined, mood: Mood): string {
  const { j, reaches } = leaf;
  const angle = leafAngle(fan, j);
  // In the middle two creases would meet and look like a slit: the innermost leaves lap over each other instead.
  const hasCrease = Math.abs(j - (fan.leaves - 1) / 2) > 0.5;
  const light = (0.94 + 0.07 * Math.cos(angle + 0.5)) * grain(j);
  const inner = hasCrease ? CREASE.to : 1 + LAP;
  const faces = reaches.flatMap((reach) =>
    openFace(reach, next?.reaches, leafRoot(fan, j).x).map(
      (d): Filled => ({ fill: insideTone(depthShare(pattern, reach.depth), 0.9 * light, mood), d }),
    ),
  );
  const folds = reaches.map(
    (reach): Filled => ({
      fill: paperTone(depthShare(pattern, reach.depth), light, mood),
      d: ofEdge(reach, -LAP, inner),
    }),
  );
  const creases = hasCrease ? reaches.map((reach) => ofEdge(reach, CREASE.from, CREASE.to)) : [];
  return [
    filled(faces),
    filled(folds),
    hasCrease ? tag("path", { d: creases.join(""), "fill-opacity": CREASE.dark }) : "",
    ...reaches.map((reach, i) => dropShadow(reaches[i - 1], reach)),
  ].join("");
}

/** What of the face behind a tip is not hidden by the next leaf inward, which reaches from its own folded edges to the spine. */
function openFace({ tip, edge, from, to }: SeenReach, next: readonly SeenReach[] | undefined, root: number): string[] {
  if (!next) return [shortStrip([tip, root], from, to)];
  const isOpen = (other: SeenReach): boolean => {
    const gap = other.tip - (0.5 + LAP) * other.edge - (tip + edge / 2);
    return other.from < to && other.to > from && gap * Math.sign(edge) > 0;
  };
  return next
    .filter(isOpen)
    .map((other) => shortStrip([tip, other.tip], Math.max(from, other.from), Math.min(to, other.to)));
}

interface Filled {
  readonly fill: string;
  readonly d: string;
}

/** A path for each fill. */
function filled(parts: readonly Filled[]): string {
  return [...Map.groupBy(parts, ({ fill }) => fill)]
    .map(([fill, own]) => tag("path", { d: own.map(({ d }) => d).join(""), fill }))
    .join("");
}

/** A strip along a folded edge, in shares of its width from outside. */
function ofEdge({ tip, edge, from, to }: SeenReach, start: number, end: number): string {
  return shortStrip([tip + (start - 0.5) * edge, tip + (end - 0.5) * edge], from, to);
}

function dropShadow(above: SeenReach | undefined, reach: SeenReach): string {
  if (!above || above.depth >= reach.depth || above.depth === 0) return "";
  const length = Math.min(reach.to - reach.from, (reach.depth - above.depth) * 0.45);
  return tag("path", { d: ofEdge({ ...reach, to: reach.from + length }, 0, 1), fill: "url(#drop)" });
}

/** Paper is not even from leaf to leaf. What comes in a regular turn would beat with a screen's pixels, so this does not. */
function grain(j: number): number {
  return 1 - 0.03 * (((j * j * 37 + j * 101) % 127) / 126);
}

/** 0 at the proudest level, 1 at the deepest; notches are deeper still but no darker. */
function depthShare(pattern: Pattern, depth: number): number {
  const front = pattern.levels[0]!.depth;
  const deepest = pattern.levels.at(-1)!.depth;
  return Math.min(1, Math.max(0, (depth - front) / Math.max(1, deepest - front)));
}
