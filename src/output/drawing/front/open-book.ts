import { type Fan, leafRoot, leafTip } from "../../../core/fan/fan.ts";
import type { Pattern } from "../../../core/pattern/pattern.ts";
import { shortStrip, shortUprights, type Upright } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import { type DrawnLeaf, leavesOutsideIn, type Reach } from "./leaves.ts";
import { Skyline } from "./skyline.ts";
import { insideTone, leafLight, type Mood, paperTone } from "./tone.ts";

/** How far a folded edge laps over the one outside it, a share of its width: no dark of the faces below shines through between two. */
const LAP = 0.1;

/** How far paper runs on below the next leaf inward, in widths of the folded edge: where a pixel is as wide as that, nothing darker shines through. */
const UNDER = 1.5;

/** How wide a folded edge is with all that it laps over and runs on below, at most, in widths of it. */
const WIDEST = LAP + 1 + LAP + UNDER;

/** Where a crease runs on a folded edge, in shares of its width from outside, and how much light it takes. */
const CREASE = { from: 0.62, to: 1.02, dark: 0.09 } as const;

/** Creases are drawn as lines, as wide as a multiple of this, mm. */
const LINE_STEP = 0.02;

/** All leaves of the opened book, outer ones first: each hides what lies between its folded edges and the spine. */
export function openBook(pattern: Pattern, fan: Fan, mood: Mood): string {
  const { levels, book } = pattern;
  const [front, deepest] = [levels[0]!.depth, levels.at(-1)!.depth];
  // 0 at the proudest level, 1 at the deepest; notches are deeper still but no darker.
  const shareOf = (depth: number): number => Math.min(1, Math.max(0, (depth - front) / Math.max(1, deepest - front)));
  const leaves = leavesOutsideIn(pattern, fan).reverse();
  // Below the next leaf inward paper may run on as far as it likes: so all folded edges are lines of one width.
  const wide = Math.max(...leaves.flatMap(({ reaches }) => reaches.map(({ edge }) => Math.abs(edge)))) * WIDEST;
  const halves = [new Half(book.leafHeight), new Half(book.leafHeight)] as const;
  let drawn = "";
  for (const leaf of leaves) {
    const { j, angle, reaches } = leaf;
    const half = halves[angle < 0 ? 0 : 1];
    const { next } = half;
    const light = leafLight(j, angle);
    // In the middle two creases would meet and look like a slit: the innermost leaves lap over each other instead.
    const hasCrease = Math.abs(j - (fan.leaves - 1) / 2) > 0.5;
    const inner = hasCrease ? CREASE.to : 1 + LAP;
    const folds = reaches.map((reach) => {
      const outer = placeOn(reach, -LAP);
      const width = next ? wide : (inner + LAP) * Math.abs(reach.edge);
      const line: Upright = [outer + (Math.sign(reach.edge) * width) / 2, reach.from, reach.to];
      const own = next ? {} : { "stroke-width": width };
      return { look: { stroke: paperTone(shareOf(reach.depth), light, mood), ...own }, line };
    });
    const faces = reaches.flatMap((reach) =>
      openFaces(reach, inner, next, leafRoot(fan, j).x).map(
        (d) => [insideTone(shareOf(reach.depth), 0.9 * light, mood), d] as const,
      ),
    );
    drawn = lined(folds) + filled(faces) + drawn;
    half.lay(leaf, hasCrease);
  }
  // The dark of the book as far as all leaves reach: where two strips meet within a pixel, no cloth of the boards shines through.
  const sides = [leafTip(fan, 0, deepest).x, leafTip(fan, book.leaves - 1, deepest).x] as const;
  return [
    tag("path", { d: shortStrip(sides, 0, book.leafHeight), fill: insideTone(1, 0.9, mood) }),
    tag("g", { fill: "none", "stroke-width": wide }, drawn),
    creases(halves.flatMap((half) => half.creases)),
    shadows(halves.flatMap((half) => half.shadows)),
  ].join("");
}

/** An upright strip that is seen, x in mm from side to side. */
interface Seen {
  readonly sides: readonly [number, number];
  readonly from: number;
  readonly to: number;
}

/** A shadow with what is seen of it. */
interface Shadow {
  readonly from: number;
  readonly to: number;
  readonly seen: readonly Seen[];
}

/** One half of the book while its leaves are laid from the middle outward: what of creases and shadows the leaves before leave to be seen. */
class Half {
  readonly creases: Seen[] = [];
  readonly shadows: Shadow[] = [];
  next: DrawnLeaf | undefined;
  readonly #skyline: Skyline;

  constructor(height: number) {
    this.#skyline = new Skyline(height);
  }

  lay(leaf: DrawnLeaf, hasCrease: boolean): void {
    const { reaches } = leaf;
    for (const [i, reach] of reaches.entries()) {
      const { from, to } = reach;
      if (hasCrease) this.creases.push(...this.#seen(reach, from, to, CREASE.from, CREASE.to));
      const length = shadowLength(reaches[i - 1], reach);
      if (length > 0)
        this.shadows.push({ from, to: from + length, seen: this.#seen(reach, from, from + length, 0, 1) });
    }
    for (const reach of reaches) this.#skyline.cover(reach.from, reach.to, outward(reach) * placeOn(reach, -LAP));
    this.next = leaf;
  }

  /** What is seen of a strip along a folded edge, in shares of its width from outside. */
  #seen(reach: Reach, from: number, to: number, start: number, end: number): Seen[] {
    const out = outward(reach);
    const [outer, inner] = [out * placeOn(reach, start), out * placeOn(reach, end)];
    return this.#skyline
      .free(from, to, [inner, outer])
      .map((piece) => ({ sides: [out * piece.out, out * outer], from: piece.from, to: piece.to }));
  }
}

/** -1 in the half whose leaves point to the left, 1 in the other. */
function outward({ edge }: Reach): 1 | -1 {
  return edge > 0 ? -1 : 1;
}

/** A place on a folded edge, in shares of its width from outside. */
function placeOn({ tip, edge }: Reach, share: number): number {
  return tip + (share - 0.5) * edge;
}

/** What of the face behind a folded edge, which ends at `inner`, the next leaf inward does not hide. */
function openFaces(reach: Reach, inner: number, next: DrawnLeaf | undefined, root: number): string[] {
  const { tip, edge, from, to } = reach;
  const start = placeOn(reach, inner);
  if (!next) return (root - start) / edge > 0 ? [shortStrip([start, root], from, to)] : [];
  return next.reaches
    .filter((other) => other.from < to && other.to > from && (placeOn(other, -LAP) - tip) / edge > 0.5)
    .map((other) => shortStrip([start, other.tip], Math.max(from, other.from), Math.min(to, other.to)));
}

/** How far the shadow reaches that a prouder stretch throws on the deeper one below it. */
function shadowLength(above: Reach | undefined, reach: Reach): number {
  if (!above || above.depth >= reach.depth || above.depth === 0) return 0;
  return Math.min(reach.to - reach.from, (reach.depth - above.depth) * 0.45);
}

/** A path for each width. */
function creases(seen: readonly Seen[]): string {
  const lines = new Map<number, Upright[]>();
  for (const { sides, from, to } of seen) {
    const width = Math.round(Math.abs(sides[1] - sides[0]) / LINE_STEP);
    if (width === 0) continue;
    const line: Upright = [(sides[0] + sides[1]) / 2, from, to];
    lines.set(width, [...(lines.get(width) ?? []), line]);
  }
  const paths = [...lines].map(([width, some]) =>
    tag("path", { d: shortUprights(some.toSorted((a, b) => a[0] - b[0])), "stroke-width": width * LINE_STEP }),
  );
  return tag("g", { stroke: "#000", "stroke-opacity": CREASE.dark }, paths.join(""));
}

/** A path for all that begin and end at one height: a path fades once from its top to its foot. */
function shadows(all: readonly Shadow[]): string {
  const alike = new Map<string, Shadow>();
  for (const { from, to, seen } of all) {
    const place = `${from} ${to}`;
    alike.set(place, { from, to, seen: [...(alike.get(place)?.seen ?? []), ...seen] });
  }
  const drawn = [...alike.values()].map(({ from, to, seen }) => {
    if (seen.length === 0) return "";
    const isWhole = seen.some((piece) => piece.from === from) && seen.some((piece) => piece.to === to);
    // What is hidden of all of them counts, too: a line without an area.
    const whole = isWhole ? "" : shortUprights([[seen[0]!.sides[0], from, to]]);
    return tag("path", { d: whole + seen.map((piece) => shortStrip(piece.sides, piece.from, piece.to)).join("") });
  });
  return tag("g", { fill: "url(#drop)" }, drawn.join(""));
}

/** A path for each look. */
function lined(
  folds: readonly { readonly look: Readonly<Record<string, string | number>>; readonly line: Upright }[],
): string {
  const paths = new Map<string, { readonly look: (typeof folds)[number]["look"]; readonly lines: Upright[] }>();
  for (const { look, line } of folds) {
    const key = JSON.stringify(look);
    const path = paths.get(key) ?? { look, lines: [] };
    path.lines.push(line);
    paths.set(key, path);
  }
  return [...paths.values()].map(({ look, lines }) => tag("path", { d: shortUprights(lines), ...look })).join("");
}

/** A path for each fill. */
function filled(strips: readonly (readonly [fill: string, d: string])[]): string {
  const paths = new Map<string, string>();
  for (const [fill, d] of strips) paths.set(fill, (paths.get(fill) ?? "") + d);
  return [...paths].map(([fill, d]) => tag("path", { d, fill })).join("");
}
