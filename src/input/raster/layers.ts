import type { FieldPath } from "../files/problem.ts";
import type { Pixels } from "./pixels.ts";
import type { RasterPlan } from "./raster-plan.ts";

/** An area of the picture at a level. It holds all that lies in front of it, so that nothing shows between neighbours. */
export interface Layer {
  readonly level: number;
  /** Of each pixel: 0 or more inside, and the further from 0 the further from the outline. Made anew each time. */
  readonly values: () => Float32Array;
}

/** What parts a picture into layers, from front to back, and what there is to say of it. */
export interface Layers {
  readonly layers: readonly Layer[];
  readonly notes: readonly string[];
}

/** A picture to be parted, and where the front matter states it. */
export interface Source {
  readonly name: string;
  readonly at: FieldPath;
  readonly pixels: Pixels;
  readonly plan: RasterPlan;
}

/** Least share of transparent pixels that carry a shape. */
const CARRIES = 0.01;
/** Half-way between clear and opaque. */
const HALF = 127.5;

/** Whether part of a picture is transparent. */
export function isCutOut({ data }: Pixels): boolean {
  let clear = 0;
  for (let at = 3; at < data.length; at += 4) if (data[at]! < HALF) clear += 1;
  return clear >= CARRIES * (data.length / 4);
}

/** Everything that is not transparent. */
export function opaque({ data }: Pixels): Float32Array {
  const values = new Float32Array(data.length / 4);
  for (let i = 0; i < values.length; i += 1) values[i] = data[4 * i + 3]! - HALF;
  return values;
}

/** Takes out of an area what is transparent: in place. */
export function withinOpaque(values: Float32Array, { data }: Pixels): Float32Array {
  for (let i = 0; i < values.length; i += 1) values[i] = Math.min(values[i]!, data[4 * i + 3]! - HALF);
  return values;
}
