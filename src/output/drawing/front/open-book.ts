import { type Fan, leafRoot, leafTip } from "../../../core/fan/fan.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { shortStrip } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import { type DrawnLeaf, leavesOutsideIn, type Reach } from "./leaves.ts";
import { insideTone, leafLight, type Mood, paperTone } from "./tone.ts";

/** How far a folded edge laps over the one outside it, a share of its width: no dark of the faces below shines through between two. */
const LAP = 0.1;

/** How far paper runs on below the next leaf inward, in widths of the folded edge: where a pixel is as wide as that, nothing darker shines through. */
const UNDER = 1.5;

/** Where a crease runs on a folded edge, in shares of its width from outside, and how much light it takes. */
const CREASE = { from: 0.62, to: 1.02, dark: 0.09 } as const;

/** All leaves of the opened book, outer ones first: each hides what lies between its folded edges and the spine. */
export function openBook(pattern: Pattern, fan: Fan, mood: Mood): string {
  const { levels, book } = pattern;
  const [front, deepest] = [levels[0]!.depth, levels.at(-1)!.depth];
  // 0 at the proudest level, 1 at the deepest; notches are deeper still but no darker.
  const shareOf = (depth: number): number => Math.min(1, Math.max(0, (depth - front) / Math.max(1, deepest - front)));
  let drawn = "";
  const next: (DrawnLeaf | undefined)[] = [];
  for (const leaf of leavesOutsideIn(pattern, fan).reverse()) {
    const { j, angle, reaches } = leaf;
    const half = angle < 0 ? 0 : 1;
    const light = leafLight(j, angle);
    // In the middle two creases would meet and look like a slit: the innermost leaves lap over each other instead.
    const hasCrease = Math.abs(j - (fan.leaves - 1) / 2) > 0.5;
    const inner = hasCrease ? CREASE.to : 1 + LAP;
    const folds = reaches.map(
      (reach) =>
        [
          paperTone(shareOf(reach.depth), light, mood),
          ofEdge(reach, -LAP, next[half] ? inner + UNDER : inner),
        ] as const,
    );
    const faces = reaches.flatMap((reach) =>
      openFaces(reach, inner, next[half], leafRoot(fan, j).x).map(
        (d) => [insideTone(shareOf(reach.depth), 0.9 * light, mood), d] as const,
      ),
    );
    drawn = filled(folds) + filled(faces) + creases(hasCrease ? reaches : []) + shadows(reaches) + drawn;
    next[half] = leaf;
  }
  // The dark of the book as far as all leaves reach: where two strips meet within a pixel, no cloth of the boards shines through.
  const sides = [leafTip(fan, 0, deepest).x, leafTip(fan, book.leaves - 1, deepest).x] as const;
  return tag("path", { d: shortStrip(sides, 0, book.leafHeight), fill: insideTone(1, 0.9, mood) }) + drawn;
}

/** What of the face behind a folded edge, which ends at `inner`, the next leaf inward does not hide. */
function openFaces({ tip, edge, from, to }: Reach, inner: number, next: DrawnLeaf | undefined, root: number): string[] {
  const start = tip + (inner - 0.5) * edge;
  if (!next) return (root - start) / edge > 0 ? [shortStrip([start, root], from, to)] : [];
  return next.reaches
    .filter((other) => other.from < to && other.to > from && (other.tip - (0.5 + LAP) * other.edge - tip) / edge > 0.5)
    .map((other) => shortStrip([start, other.tip], Math.max(from, other.from), Math.min(to, other.to)));
}

function creases(reaches: readonly Reach[]): string {
  if (reaches.length === 0) return "";
  const d = reaches.map((reach) => ofEdge(reach, CREASE.from, CREASE.to)).join("");
  return tag("path", { d, "fill-opacity": CREASE.dark });
}

/** The shadows that prouder stretches throw on deeper ones below them. */
function shadows(reaches: readonly Reach[]): string {
  return reaches.map((reach, i) => dropShadow(reaches[i - 1], reach)).join("");
}

/** A path for each fill. */
function filled(strips: readonly (readonly [fill: string, d: string])[]): string {
  const paths = new Map<string, string>();
  for (const [fill, d] of strips) paths.set(fill, (paths.get(fill) ?? "") + d);
  return [...paths].map(([fill, d]) => tag("path", { d, fill })).join("");
}

/** A strip along a folded edge, in shares of its width from outside. */
function ofEdge({ tip, edge, from, to }: Reach, start: number, end: number): string {
  return shortStrip([tip + (start - 0.5) * edge, tip + (end - 0.5) * edge], from, to);
}

function dropShadow(above: Reach | undefined, reach: Reach): string {
  if (!above || above.depth >= reach.depth || above.depth === 0) return "";
  const length = Math.min(reach.to - reach.from, (reach.depth - above.depth) * 0.45);
  return tag("path", { d: ofEdge({ ...reach, to: reach.from + length }, 0, 1), fill: "url(#drop)" });
}
