import type { SupplyId, SupplyUnit } from "../kit/supply-id.ts";
import type { Part } from "../window/part.ts";
import type { CardSheets } from "./card-sheets.ts";

/** Something to have at hand; words/supplies.ts names it. */
export interface Supply {
  /** What is used up, and what stays. */
  readonly kind: "material" | "tool";
  /** Of a computed supply; undefined where only the kit's author states it. */
  readonly id: SupplyId | undefined;
  /** What the author calls it and counts it by, where it is hers. */
  readonly own: { readonly item: string; readonly unit: string } | undefined;
  readonly quantity: number;
  /** Before it was rounded up to what can be bought, in the same unit. */
  readonly exact: number;
  /** Undefined where the author's own unit is none of these. */
  readonly unit: SupplyUnit | undefined;
  /** Why, or which: sizes of this kit. */
  readonly reason: SupplyReason | undefined;
  /** For the whole quantity, in the kit's currency; undefined where the kit states none. */
  readonly price: number | undefined;
}

/** Why a supply is needed, or which it is. Lengths mm. */
export type SupplyReason =
  | { readonly kind: "book"; readonly leaves: number; readonly leafHeight: number; readonly leafWidth: number }
  | { readonly kind: "blades"; readonly cuts: number; readonly perBlade: number }
  | { readonly kind: "glue-dots"; readonly tacks: number; readonly window: number }
  | {
      readonly kind: "card";
      readonly sheet: string;
      readonly tooLarge: readonly Part[];
      /** Sheets for the gauge, the gauge's lines, sheets for window and motifs. */
      readonly gauge: number;
      readonly lines: number;
      readonly window: number;
      /** Of those for the window, by colour, where the kit states colours. */
      readonly colours?: readonly CardSheets[];
    }
  /** For the corner gauge and what leaves are folded over. */
  | { readonly kind: "corner-card"; readonly sheet: string }
  | { readonly kind: "acetate"; readonly sheet: string; readonly tooLarge: readonly Part[] }
  | { readonly kind: "light"; readonly diameter: number; readonly height: number }
  | { readonly kind: "cells" }
  | { readonly kind: "tape"; readonly frame: number; readonly waste: number }
  | { readonly kind: "string"; readonly waste: number }
  | { readonly kind: "button" }
  | { readonly kind: "tool" }
  /** Scissors that cut out what is of card, and no leaf. */
  | { readonly kind: "card-scissors" }
  /** What keeps the gauge level: up to a height, in so many of the maker's own pieces where she states their thickness. */
  | { readonly kind: "packing"; readonly height: number; readonly piece: number | undefined; readonly pieces: number };
