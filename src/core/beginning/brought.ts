import type { Kit } from "../kit/kit.ts";
import type { LevelMap } from "../picture/level-map.ts";
import type { Marked } from "./picture-wish.ts";

/** Something that stands in the way, in the words of its reader. */
export interface Hurdle {
  /** Where it is in the file that was brought, or under which key: `gull.svg:12`, `picture.limits`. */
  readonly place: string | undefined;
  readonly given: string;
  /** Empty where `given` says all. */
  readonly allowed: string;
  readonly remedy: string;
}

/** A picture that was brought to the desk, or why it cannot be one. */
export type Brought =
  | { readonly upload: string; readonly name: string; readonly seen: BroughtDrawing | BroughtPhotograph }
  | { readonly hurdles: readonly Hurdle[] };

/** A drawing as it paints. */
export interface BroughtDrawing {
  readonly kind: "drawing";
  /** Of the canvas, in its units. */
  readonly width: number;
  readonly height: number;
  /** In painter order, thinned out for looking at. */
  readonly shapes: readonly {
    readonly path: string;
    readonly rule: "nonzero" | "evenodd";
    readonly colour: string | undefined;
  }[];
  /** Ways to tell the shapes apart, the usual one first; none where they are all of a kind. */
  readonly sortings: readonly {
    readonly by: "names" | "colours";
    readonly marks: readonly Marked[];
    /** Of each mark, 0…1 of the canvas. */
    readonly shares: readonly number[];
    /** Of each shape, its mark from 0. */
    readonly markOf: readonly number[];
  }[];
}

/** A photograph or a scan as it was decoded. */
export interface BroughtPhotograph {
  readonly kind: "photograph";
  /** As it was saved, turned upright, in pixels. */
  readonly width: number;
  readonly height: number;
  /** How often each lightness 0…255 occurs, from none to the most as 0…100. */
  readonly histogram: readonly number[];
  /** The limits that are found for two levels, for three and so on; empty where it has too few tones for so many. */
  readonly limits: readonly (readonly number[])[];
  /** Whether part of it is transparent, which then tells the shape. */
  readonly isCutOut: boolean;
  /** Its colours, for two of them, for three and so on, with the names that people call them by. */
  readonly palettes: readonly (readonly Marked[])[];
}

/** What becomes of a picture as it is wished, on the book that was stated. */
export interface Look {
  /** Undefined where it cannot be drawn. */
  readonly map: LevelMap | undefined;
  /** Names of its levels, front to back. */
  readonly levels: readonly string[];
  /** What does not count, or was taken otherwise than drawn. */
  readonly notes: readonly string[];
  /** The kit that fits its book, without its picture, which is `map`. */
  readonly kit: Omit<Kit, "picture"> | undefined;
  /** Whether the light that was wished has room. */
  readonly lit: boolean;
  /** Why there is no kit. */
  readonly hurdles: readonly Hurdle[];
}

/** A kit's folder that was made. */
export type Made = { readonly slug: string } | { readonly hurdles: readonly Hurdle[] };

/** An icon of the open set: its name, and its drawing in a box of 256 by 256. */
export interface Icon {
  readonly name: string;
  readonly path: string;
}
