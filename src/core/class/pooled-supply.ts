import type { SupplyId, SupplyUnit } from "../kit/supply-id.ts";
import type { CardSheets } from "../supplies/card-sheets.ts";
import type { Supply, SupplyReason } from "../supplies/supply.ts";
import type { SeatPart } from "./class-sheets.ts";

/** A line of the class's shopping list. Quantities in `unit`, prices in the class's currency. */
export interface PooledSupply {
  readonly kind: Supply["kind"];
  /** Of a supply that the program counts; `paper` is what a guide is drawn on. */
  readonly id: SupplyId | "paper" | undefined;
  readonly own: Supply["own"];
  readonly unit: SupplyUnit | undefined;
  /** Name of the sheets' size, where it is counted in sheets. */
  readonly sheet: string | undefined;
  readonly reason: PooledReason;
  /** For all seats together, rounded up once to what can be bought. */
  readonly need: number;
  readonly stock: number;
  readonly buy: number;
  /** Where it is sold in packs and some is to be bought: how many packs of how many. */
  readonly packs: { readonly count: number; readonly size: number } | undefined;
  /** Price of what all seats use, and of what is still to buy; undefined where no price is stated. */
  readonly worth: number | undefined;
  readonly toPay: number | undefined;
  /** What each seat has of it, by its number: parts of a whole that need not be 1. */
  readonly shares: ReadonlyMap<number, number>;
}

/** A line before stock is taken off. */
export type NeededSupply = Omit<PooledSupply, "stock" | "buy" | "packs" | "toPay">;

/** Why a line is on the list: for so many seats, with the size or use of the thing where all share it; sheets as they are packed. */
export type PooledReason =
  | { readonly kind: "seats"; readonly seats: number; readonly of: SupplyReason | undefined }
  | {
      readonly kind: "packed";
      readonly tooLarge: readonly SeatPart[];
      /** Sheets of card by colour, where kits state colours. */
      readonly colours?: readonly CardSheets[];
    };
