import { countBelow } from "../geometry/count-below.ts";
import { depthAt, flapsOf, type LeafFold, lyingAt } from "./leaf-fold.ts";

/** The block that the folded leaves stand in; lengths mm. */
export interface CornerStack {
  readonly leafHeight: number;
  readonly leafWidth: number;
  readonly blockThickness: number;
  /** Thickness of one leaf. */
  readonly caliper: number;
  /** Leaves that are not folded at all. */
  readonly unfolded: number;
  /** How many leaf thicknesses a springy flap counts, κ. */
  readonly flapBulk: number;
}

/** Bands of the leaf's height in which the bulk is counted. */
const BANDS = 48;

/**
 * The opening (radians) that folded corners force on the book: max over radius r and height u of (S(r,u) − T)/r, as with
 * straight flaps (domain: resting opening). A straight flap lies at the same radii over all of its height, so it counts as a
 * whole. A folded corner is a triangle: at each height it lies at other radii, and at its points it has no area and no bulk.
 * So bulk is counted by area: the leaf's height is taken in bands, and in the middle of each the flap counts κ·t at the
 * radii that its triangle has there, the body t as far out as its crease lets it reach. A point that lies between middles counts
 * nothing. Within a band S falls as r grows but where a flap begins, so only the inner ends are looked at.
 */
export function cornerRestingOpening(stack: CornerStack, folds: readonly LeafFold[]): number {
  const { leafHeight, leafWidth } = stack;
  const folded = folds.map((fold) => ({ fold, flaps: flapsOf(fold) }));
  let greatest = 0;
  for (let band = 0; band < BANDS; band += 1) {
    const height = ((band + 0.5) / BANDS) * leafHeight;
    const [outer, inner, tips]: [number[], number[], number[]] = [[], [], []];
    for (const { fold, flaps } of folded) {
      tips.push(leafWidth - depthAt(fold, height));
      for (const flap of flaps) {
        const lies = lyingAt(flap, height);
        if (!lies) continue;
        outer.push(leafWidth - lies[0]);
        inner.push(leafWidth - lies[1]);
      }
    }
    const most = mostForced(stack, { outer: sorted(outer), inner: sorted(inner), tips: sorted(tips) });
    greatest = Math.max(greatest, most);
  }
  return greatest;
}

/** At one height: radii at which flaps end outward and inward, and at which bodies end; in order. */
interface Radii {
  readonly outer: Float64Array;
  readonly inner: Float64Array;
  readonly tips: Float64Array;
}

function mostForced(
  { unfolded, flapBulk, caliper, blockThickness }: CornerStack,
  { outer, inner, tips }: Radii,
): number {
  let greatest = 0;
  inner.forEach((radius, before) => {
    if (radius <= 0 || inner[before + 1] === radius) return;
    const bodies = unfolded + tips.length - countBelow(tips, radius);
    const lying = before + 1 - countBelow(outer, radius);
    greatest = Math.max(greatest, ((bodies + flapBulk * lying) * caliper - blockThickness) / radius);
  });
  return greatest;
}

function sorted(values: readonly number[]): Float64Array {
  return new Float64Array(values).sort();
}
