import type { LeafPoint } from "../../../core/corner/crease.ts";
import { creasesOf, type LeafFold } from "../../../core/corner/leaf-fold.ts";
import type { PatternBase } from "../../../core/pattern/pattern.ts";
import { type Look, THIN } from "../diagrams/ink.ts";

/** Where things of a leaf stand in a drawing: depth from the fore-edge and height from the head, mm. */
export interface LeafPlace {
  readonly x: (depth: number) => number;
  readonly y: (height: number) => number;
}

/** The fore-edge where it stays unfolded. */
export const KEPT: Look = { ...THIN, stroke: "#000", "stroke-width": "1.1" };

/** The corners that a leaf's creases fold over, as they lie before. */
export function cornersOf(fold: LeafFold): LeafPoint[][] {
  return creasesOf(fold).map(({ from, to }) => [from, to, { at: to.at, depth: 0 }]);
}

/** What is left of a leaf that lies flat once some of its creases are folded: its outline from the gutter at the head, round by the fore-edge. */
export function bodyOf(creases: ReturnType<typeof creasesOf>, { book }: Pick<PatternBase, "book">): LeafPoint[] {
  const [head, tail] = (["head", "tail"] as const).map((corner) => creases.find((one) => one.corner === corner));
  const { leafHeight, leafWidth } = book;
  return [
    { at: 0, depth: leafWidth },
    ...(head ? [head.to, head.from] : [{ at: 0, depth: 0 }]),
    ...(tail ? [tail.from, tail.to] : [{ at: leafHeight, depth: 0 }]),
    { at: leafHeight, depth: leafWidth },
  ];
}
