import type { LeafNumber } from "../book/leaf-number.ts";
import type { Place } from "../fan/fan.ts";

/** The light as its owner measures it, and how it is to stand: an upright cylinder. Lengths mm. */
export interface LightWish {
  /** Level (from 1) in whose region it stands. */
  readonly level: number;
  readonly diameter: number;
  readonly height: number;
  /** Free space all round. */
  readonly clearance: number;
  /** How far the cylinder stands behind the front level's tips. */
  readonly setback: number;
  /** Height of the floor it stands on, from the head; auto is the lowest that is wide enough. */
  readonly floor: "auto" | number;
}

/** A notch in one leaf: cut from the fore-edge inward over a stretch of heights, after folding. */
export interface Notch {
  readonly leaf: LeafNumber;
  readonly from: number;
  readonly to: number;
  /** From the fore-edge of the unfolded leaf. */
  readonly depth: number;
  /** Paper left between the notch and the gutter. */
  readonly remaining: number;
}

/** The room for the light: where it stands and what is cut for it. */
export interface Pocket {
  readonly light: LightWish;
  readonly floor: number;
  /** Axis of the cylinder; x, z as in the fan. */
  readonly centre: Place;
  readonly notches: readonly Notch[];
  /** The region's least width over the heights that the light fills, mm. */
  readonly leastWidth: number;
  /** The most that this book and picture can take: the widest light of this height, the highest of this width. */
  readonly largest: { readonly diameter: number; readonly height: number };
}
