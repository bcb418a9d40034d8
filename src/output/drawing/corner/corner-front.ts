import { caliper } from "../../../core/book/book.ts";
import { flapsOf, type LeafFold } from "../../../core/corner/leaf-fold.ts";
import { type Fan, leafAngle, leafRoot, leafTip } from "../../../core/fan/fan.ts";
import type { Point } from "../../../core/geometry/point.ts";
import { cornerProfile, type ProfileStretch, unfoldedProfile } from "../../../core/makeability/profile.ts";
import type { CornerPattern } from "../../../core/pattern/corner-pattern.ts";
import { fanOf } from "../../../core/pattern/fan-of.ts";
import { leavesInBook } from "../../../core/pattern/pattern.ts";
import * as say from "../../../words/messages.ts";
import { type FrontOptions, openedBook } from "../front/book-picture.ts";
import { insideTone, leafLight, type Mood, paperTone } from "../front/tone.ts";
import { ringPath } from "../path.ts";
import { tag } from "../svg-text.ts";

/** How many pieces a slanting edge is drawn in, darker the deeper it lies. */
const PIECES = 4;

/** How much of the light a page's face takes that is seen behind its edge. */
const FACE = 1.12;

/** The finished book seen from the front where corners are folded: the edges that stay, slanting folds that fall away from them, and the pages behind. */
export function cornerFront(pattern: CornerPattern, options: FrontOptions): string {
  const { leaves } = pattern;
  const words = say.drawFrontCorners({ title: options.title, leaves: leaves.length });
  return openedBook(pattern, words, options, foldedLeaves(pattern, options.mood));
}

/** All leaves, outer ones first: each covers what stands behind it, from its edge to the spine. */
function foldedLeaves(pattern: CornerPattern, mood: Mood): string {
  const fan = fanOf(pattern);
  const { book } = pattern;
  const folds = new Map(pattern.leaves.map(({ leaf, fold }) => [leaf - 1, fold]));
  const deepest = Math.max(1, ...pattern.leaves.flatMap(({ fold }) => cornerProfile(fold, book).map(depthOf(pattern))));
  return leavesInBook(pattern)
    .sort((a, b) => Math.abs(leafAngle(fan, b)) - Math.abs(leafAngle(fan, a)))
    .map((j) => foldedLeaf(pattern, fan, j, { fold: folds.get(j), deepest, mood }))
    .join("");
}

interface Drawn {
  readonly fold: LeafFold | undefined;
  /** How deep the deepest edge of all lies, mm from the fore-edge. */
  readonly deepest: number;
  readonly mood: Mood;
}

/** One leaf: its page from the edge to the spine, and the edge itself as wide as its neighbour lets see. */
function foldedLeaf(pattern: CornerPattern, fan: Fan, j: number, { fold, deepest, mood }: Drawn): string {
  const { book } = pattern;
  const angle = leafAngle(fan, j);
  const light = leafLight(j, angle);
  const profile = fold ? cornerProfile(fold, book) : unfoldedProfile(book);
  const inward = angle < 0 ? 1 : -1;
  const root = leafRoot(fan, j).x;
  const tip = (radius: number): number => leafTip(fan, j, book.leafWidth - radius).x;
  const half = edgeWidth(pattern, fan, j) / 2;
  const outline = profile.flatMap(({ from, to, radiusFrom, radiusTo }): Point[] => [
    [tip(radiusFrom) - inward * half, from],
    [tip(radiusTo) - inward * half, to],
  ]);
  const page = ringPath([...outline, [root, book.leafHeight], [root, 0]]);
  const share = (radius: number): number => Math.min(1, (book.leafWidth - radius) / deepest);
  const edges = profile
    .flatMap((stretch) => piecesOf(stretch))
    .map(({ from, to, radiusFrom, radiusTo }) => {
      const d = ringPath([
        [tip(radiusFrom) - inward * half, from],
        [tip(radiusTo) - inward * half, to],
        [tip(radiusTo) + inward * half, to],
        [tip(radiusFrom) + inward * half, from],
      ]);
      return tag("path", { d, fill: paperTone(0.85 * share((radiusFrom + radiusTo) / 2), light, mood) });
    });
  return (
    tag("path", { d: page, fill: insideTone(0, FACE * light, mood) }) +
    flaps(fold, angle, tip, light, mood, book.leafWidth) +
    edges.join("")
  );
}

/** Corners lie on the front of their leaf, so they are seen in the half where the fronts face the viewer. */
function flaps(
  fold: LeafFold | undefined,
  angle: number,
  tip: (radius: number) => number,
  light: number,
  mood: Mood,
  leafWidth: number,
): string {
  if (!fold || angle >= 0) return "";
  const shapes = flapsOf(fold).flatMap((flap): Point[][] =>
    flap.length === 2 ? [] : [flap.map(({ at, depth }): Point => [tip(leafWidth - depth), at])],
  );
  return shapes.map((shape) => tag("path", { d: ringPath(shape), fill: insideTone(0.1, light, mood) })).join("");
}

/** An upright edge whole, a slanting one in pieces. */
function piecesOf(stretch: ProfileStretch): ProfileStretch[] {
  const { from, to, radiusFrom, radiusTo, isShown } = stretch;
  if (Math.abs(radiusFrom - radiusTo) < 1) return [stretch];
  const at = (share: number): readonly [number, number] => [
    from + share * (to - from),
    radiusFrom + share * (radiusTo - radiusFrom),
  ];
  return Array.from({ length: PIECES }, (_, i) => {
    const [begin, end] = [at(i / PIECES), at((i + 1) / PIECES)];
    return { from: begin[0], to: end[0], radiusFrom: begin[1], radiusTo: end[1], isShown };
  });
}

function depthOf({ book }: CornerPattern): (stretch: ProfileStretch) => number {
  return ({ radiusFrom, radiusTo }) => book.leafWidth - Math.min(radiusFrom, radiusTo);
}

/** How wide an edge is seen: it fills the room halfway to its neighbours. */
function edgeWidth(pattern: CornerPattern, fan: Fan, j: number): number {
  const other = j + 1 < pattern.book.leaves ? j + 1 : j - 1;
  const pitch = leafTip(fan, other, 0).x - leafTip(fan, j, 0).x;
  return Math.max(0.25, caliper(pattern.book) * 1.6, Math.abs(pitch));
}
