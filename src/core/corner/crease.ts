import { tidy } from "../units/length.ts";

/** A place on a leaf, mm: `at` from the head, `depth` from the fore-edge. */
export interface LeafPoint {
  readonly at: number;
  readonly depth: number;
}

/** A crease that folds one corner of a leaf over: from its mark on the fore-edge to the edge at the head or the tail. */
export interface Crease {
  readonly corner: "head" | "tail";
  readonly from: LeafPoint;
  readonly to: LeafPoint;
}

/** What the creases of a book have room for, mm. */
export interface CreaseRoom {
  readonly leafHeight: number;
  /** How far inward a folded corner may reach: the leaf's width less the clearance at the gutter. */
  readonly reach: number;
  /** Ends of creases are marked at multiples of this. */
  readonly step: number;
}

/**
 * The crease that folds the corner beside a mark over, undefined where the mark is at the edge itself. At 45° the corner comes
 * to lie as far inward as it was from the mark, and its own edge lies level (common practice of the trade, no source).
 *
 * Where the gutter is nearer than that, the crease is turned toward the upright. A corner at the distance a from the mark,
 * folded along a crease at the angle φ from the fore-edge, lands a·sin 2φ inward; that is the whole reach where
 * sin 2φ = reach / a, and there the crease ends at a·tan φ = (a − √(a² − reach²))·a / reach. It is rounded down to the step, so
 * it is turned a little more, and the corner stays inside.
 */
export function creaseAt(
  mark: number,
  corner: Crease["corner"],
  { leafHeight, reach, step }: CreaseRoom,
): Crease | undefined {
  const away = corner === "head" ? mark : leafHeight - mark;
  if (away <= 0) return undefined;
  const edge = corner === "head" ? 0 : leafHeight;
  const turned = (away * (away - Math.sqrt(Math.max(0, away * away - reach * reach)))) / reach;
  const depth = away <= reach ? away : tidy(Math.floor(turned / step + 1e-9) * step);
  return { corner, from: { at: mark, depth: 0 }, to: { at: edge, depth } };
}

/** Whether a crease is steeper than 45°, so that the folded edge does not lie level. */
export function isTurned({ from, to }: Crease): boolean {
  return to.depth < Math.abs(from.at - to.at) - 1e-6;
}

/** The flap that a crease folds over, as it lies on the leaf: the crease's two ends, and where the corner comes to lie. */
export function flapOf({ from, to }: Crease): readonly [LeafPoint, LeafPoint, LeafPoint] {
  // The corner mirrored in the crease: it moves by twice its distance from it, square to it.
  const [along, inward] = [to.at - from.at, to.depth];
  const twice = (2 * along * inward) / (along * along + inward * inward);
  return [from, to, { at: to.at - twice * inward, depth: twice * along }];
}
