import { type LeafNumber, leafNumber } from "../../../core/book/leaf-number.ts";
import { depthAt } from "../../../core/corner/leaf-fold.ts";
import { leafRoot, leafTip } from "../../../core/fan/fan.ts";
import type { Notch } from "../../../core/light/light.ts";
import type { AnyPattern } from "../../../core/pattern/corner-pattern.ts";
import { fanOf } from "../../../core/pattern/fan-of.ts";
import type { PatternBase } from "../../../core/pattern/pattern.ts";
import { shortLine, shortRing } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import { depthOf } from "./example-leaf.ts";
import { type At, BOARD, edgeOn, LEAVES, THIN } from "./ink.ts";

/** About how many leaves are drawn of a book. */
const DRAWN = 44;

/** The opened book from above, viewer at the foot of the drawing. Places in the drawing are (x, z) of the fan, scaled. */
export interface FanFromAbove {
  readonly svg: string;
  /** Folded edges of the first and last picture leaf at the head. */
  readonly first: At;
  readonly last: At;
  /** Fore-edges of the boards of the first and the last leaf. */
  readonly boards: readonly [At, At];
  /** Tips of all leaves that are drawn. */
  readonly tips: readonly At[];
}

/** `middle` is where the middle of the spine stands. The leaves are as they stand at a `height` from the head, and `cut` back there. */
export function fanFromAbove(
  pattern: AnyPattern,
  middle: At,
  scale: number,
  height = 0,
  cut: readonly Notch[] = [],
): FanFromAbove {
  const { book, fit } = pattern;
  const fan = fanOf(pattern);
  const place = ({ x, z }: { x: number; z: number }): At => [middle[0] + x * scale, middle[1] + z * scale];
  const folded = depthsAt(pattern, height);
  const notches = new Map(cut.map((notch) => [notch.leaf, notch.depth]));
  const depthOfLeaf = (leaf: LeafNumber): number => Math.max(folded.get(leaf) ?? 0, notches.get(leaf) ?? 0);
  const tipOf = (leaf: LeafNumber): At => place(leafTip(fan, leaf - 1, depthOfLeaf(leaf)));
  const lineOf = (leaf: LeafNumber): string => shortLine([place(leafRoot(fan, leaf - 1)), tipOf(leaf)], 2);
  const every = Math.max(1, Math.round(book.leaves / DRAWN));
  const drawn = Array.from({ length: Math.ceil(book.leaves / every) }, (_, i) => leafNumber(1 + i * every));
  const lines = drawn.map((leaf) => lineOf(leaf)).join("");
  const boards = ([-1, 1] as const).map((side) => boardOf(pattern, side, place));
  const left = pattern.book.direction === "ltr" ? boards : [...boards].reverse();
  const ends = [fit.firstLeaf, fit.lastLeaf].map((leaf) => edgeOn(lineOf(leaf)));
  return {
    svg: tag("path", { d: lines, ...LEAVES }) + boards.map((board) => board.svg).join("") + ends.join(""),
    first: tipOf(fit.firstLeaf),
    last: tipOf(fit.lastLeaf),
    boards: [left[0]!.edge, left[1]!.edge],
    tips: drawn.map(tipOf),
  };
}

/** How deep each folded leaf is folded at a height. */
function depthsAt(pattern: AnyPattern, height: number): ReadonlyMap<LeafNumber, number> {
  if (pattern.corner) return new Map(pattern.leaves.map(({ leaf, fold }) => [leaf, depthAt(fold, height)]));
  return new Map(
    pattern.leaves.map(({ leaf, spans }) => {
      const span = spans.find(({ from, to }) => height >= from && height < to);
      return [leaf, span ? depthOf(pattern, span.level) : 0];
    }),
  );
}

/** A board stands beyond the outermost leaf at half the opening. */
function boardOf(
  pattern: PatternBase,
  side: -1 | 1,
  place: (at: { x: number; z: number }) => At,
): { svg: string; edge: At } {
  const { book, fit } = pattern;
  const half = (side * fit.opening) / 2;
  const length = book.leafWidth + book.square;
  const ray = (start: number): [At, At] => [
    place({ x: side * start, z: 0 }),
    place({ x: side * start + length * Math.sin(half), z: length * Math.cos(half) }),
  ];
  const inner = ray(book.blockThickness / 2);
  const outer = ray(book.blockThickness / 2 + book.boardThickness);
  return {
    svg: tag("path", { d: shortRing([inner[0], inner[1], outer[1], outer[0]], 2), ...THIN, fill: BOARD }),
    edge: outer[1],
  };
}
