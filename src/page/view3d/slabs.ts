import { type Edge, edgesAcross } from "../../core/geometry/crossings.ts";
import type { Point } from "../../core/geometry/point.ts";

/** An upright slab of an area: between x `left` and `right`, from the upper edge to the lower one (y down). */
export interface Slab {
  readonly left: number;
  readonly right: number;
  /** Upper and lower edge at the left and at the right. */
  readonly upper: readonly [number, number];
  readonly lower: readonly [number, number];
}

/**
 * Cuts the area that closed outlines enclose (even-odd, so holes stay open) into upright slabs no wider than `step`, which
 * bend along a curve. Every corner of the outlines lies within 0.05 mm of a slab's border, so the slabs fill the area to that.
 */
export function slabsOf(rings: readonly (readonly Point[])[], step: number): Slab[] {
  const borders = bordersOf(
    rings.flat().map(([x]) => x),
    step,
  );
  return borders.slice(1).flatMap((right, i) => {
    const left = borders[i]!;
    const middle = (left + right) / 2;
    const crossing = edgesAcross(rings, middle).sort((one, two) => heightAt(one, middle) - heightAt(two, middle));
    const slabs: Slab[] = [];
    for (let k = 0; k + 1 < crossing.length; k += 2) {
      const [over, under] = [crossing[k]!, crossing[k + 1]!];
      slabs.push({
        left,
        right,
        upper: [heightAt(over, left), heightAt(over, right)],
        lower: [heightAt(under, left), heightAt(under, right)],
      });
    }
    return slabs;
  });
}

/** Corners nearer to each other than this share a border, mm: slabs thinner than a hair are drawn badly. */
const SAME = 0.05;

function bordersOf(xs: readonly number[], step: number): number[] {
  const sorted = xs.toSorted((a, b) => a - b);
  const borders: number[] = [];
  for (const x of sorted) {
    const last = borders.at(-1);
    if (last === undefined) borders.push(x);
    else if (x - last > SAME) {
      const pieces = Math.ceil((x - last) / step);
      for (let i = 1; i <= pieces; i += 1) borders.push(last + ((x - last) * i) / pieces);
    }
  }
  return borders;
}

/** Within the edge's own heights, and rounded to 1e-4 mm so that slabs meet in the very same corners and no crack shows. */
function heightAt([a, b]: Edge, x: number): number {
  const share = Math.min(1, Math.max(0, (x - a[0]) / (b[0] - a[0])));
  return Math.round(1e4 * (a[1] + share * (b[1] - a[1]))) / 1e4;
}
