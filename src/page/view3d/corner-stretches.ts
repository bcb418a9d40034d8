import type { RoundCorners } from "../../output/data/round-data.ts";
import type { Piece } from "./leaf-profile.ts";

/** A stretch of one leaf between two heights, mm from the head, whose section changes evenly from its upper to its lower end. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly level: number;
  readonly upper: Piece;
  readonly lower: Piece;
}

/** The level of what is left of a leaf beside what it shows. */
const BESIDE = 2;

/**
 * A leaf whose corners are folded: what it shows at its unfolded fore-edge, and beside it the body up to the crease with the
 * corner behind it. A folded corner is a triangle, so its section changes evenly between three heights: the edge at head or
 * tail, where the corner's point comes to lie, and the mark.
 */
export function cornerStretches(
  [from, to, head, tail]: RoundCorners,
  { leafHeight, leafWidth }: { readonly leafHeight: number; readonly leafWidth: number },
): Stretch[] {
  const whole: Piece = { tip: leafWidth, end: leafWidth, flapEnd: undefined };
  const pieces = (away: number, depth: number): Folded => foldedCorner(away, depth, leafWidth);
  const above = stretched(pieces(from, head), (away) => from - away);
  const below = stretched(pieces(leafHeight - to, tail), (away) => to + away);
  const shown: Stretch[] = to > from ? [{ from, to, level: 1, upper: whole, lower: whole }] : [];
  return [...above, ...shown, ...below].sort((a, b) => a.from - b.from);
}

/** Sections of a folded corner from its mark outward, each at its distance from the mark. */
type Folded = readonly { readonly away: number; readonly piece: Piece }[];

/** `away` is how far the mark is from the edge, `depth` where the crease ends there, mm. */
function foldedCorner(away: number, depth: number, leafWidth: number): Folded {
  if (away <= 0 || depth <= 0) return [];
  // The corner mirrored in the crease lies so far from the mark, and so deep.
  const square = away * away + depth * depth;
  const point = (away * (away * away - depth * depth)) / square;
  const deep = (2 * depth * away * away) / square;
  const crease = (at: number): number => (depth * at) / away;
  const flap = (at: number): number =>
    at < point ? (deep * at) / point : depth + ((deep - depth) * (away - at)) / (away - point);
  const places = point > 1e-6 ? [0, point, away] : [0, away];
  return places.map((at) => {
    const tip = leafWidth - crease(at);
    return { away: at, piece: { tip, end: tip, flapEnd: leafWidth - Math.max(crease(at), flap(at)) } };
  });
}

function stretched(folded: Folded, height: (away: number) => number): Stretch[] {
  return folded.slice(1).map((outer, i) => {
    const ends = [folded[i]!, outer].toSorted((a, b) => height(a.away) - height(b.away));
    const [upper, lower] = [ends[0]!, ends[1]!];
    return {
      from: height(upper.away),
      to: height(lower.away),
      level: BESIDE,
      upper: upper.piece,
      lower: lower.piece,
    };
  });
}
