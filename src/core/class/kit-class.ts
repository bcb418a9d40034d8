import type { Kit, SheetSize } from "../kit/kit.ts";
import type { Priced, SupplyId } from "../kit/supply-id.ts";
import type { Refit } from "../refit/refit.ts";
import type { FoldStyle } from "../spans/fold-style.ts";
import type { UnitSystem } from "../units/length.ts";
import type { ClassState } from "./class-state.ts";

/** A class as its teacher states it, every default filled in. */
export interface KitClass {
  readonly slug: string;
  readonly title: string;
  readonly summary: string;
  /** ISO 8601 day. */
  readonly date: string;
  /** ISO 8601 day on which it was made known, where that is stated. */
  readonly announced: string | undefined;
  readonly place: string;
  readonly units: UnitSystem;
  readonly paper: "a4" | "letter";
  readonly kits: readonly Kit[];
  readonly state: ClassState;
  /** Those with a book, in the order of their numbers. */
  readonly seats: readonly Seat[];
  /** Those whose books are still to come, in the order of their numbers. */
  readonly awaiting: readonly AwaitingSeat[];
  /** A crate of substitute books. */
  readonly spares: readonly SpareBook[];
  readonly sessions: readonly Session[];
  /** Tools of which there are fewer than seats; the rest lies at every seat. */
  readonly tools: Readonly<Partial<Record<SharedTool, number>>>;
  /** How many times the kits' estimate the group takes. */
  readonly pace: number;
  readonly ready: readonly ("scores" | "parts")[];
  readonly fittingShare: number;
  readonly sheets: readonly SheetSize[];
  readonly waste: number;
  readonly prices: Readonly<Partial<Record<Priced, number>>>;
  /** For one printed side. */
  readonly pagePrice: number | undefined;
  /** Prices of sheets of a size, in place of those of all sizes. */
  readonly sheetPrices: readonly SheetPrice[];
  /** How many of a thing are sold together. */
  readonly packs: Readonly<Partial<Record<Priced, number>>>;
  readonly currency: string;
  readonly stock: readonly Stock[];
  readonly bring: readonly string[];
  /** Those of `bring` that are supplies which the program counts; everything else is there in the class. */
  readonly brought: readonly SupplyId[];
  /** How much of a packet the seats are given. */
  readonly packet: PacketEdition;
}

/** The table in short with what is cut out; the whole packet; or the whole one without its strips. */
export type PacketEdition = "compact" | "whole" | "bench";

/** What a sheet of a size costs, by what it is of. */
export interface SheetPrice {
  /** The size's name. */
  readonly sheet: string;
  readonly card: number | undefined;
  readonly acetate: number | undefined;
}

/** Something at hand: a supply that the program counts, or what a kit's author calls it; in the list's unit. */
export interface Stock {
  readonly id: SupplyId | "paper" | undefined;
  readonly item: string;
  readonly quantity: number;
}

/** A place in the class, known by its number alone. */
export interface Seat {
  readonly number: number;
  readonly kit: Kit;
  /** The whole book, for trying other kits on it. */
  readonly book: Refit;
  /** Where it is stated: in the table of books, or in the class's file itself. */
  readonly bookIn: "table" | "matter";
  /** What this seat's book changes of the kit. */
  readonly refit: Refit;
  /** How many times the kit's estimate this seat takes. */
  readonly pace: number;
}

/** A seat without a book, and its kit where that is settled. */
export interface AwaitingSeat {
  readonly number: number;
  readonly kit: Kit | undefined;
  /** How its leaves are to be made, where its line states that. */
  readonly foldStyle?: FoldStyle;
}

/** A substitute book, and what the teacher calls it. */
export interface SpareBook {
  readonly label: string;
  readonly book: Refit;
}

/** Tools that seats may share, taking turns. */
export const SHARED_TOOLS = ["awl", "scissors", "knife", "mat", "glueGun"] as const;

export type SharedTool = (typeof SHARED_TOOLS)[number];

export interface Session {
  readonly title: string;
  readonly date: string | undefined;
  /** `18:30`, or undefined. */
  readonly starts: string | undefined;
  readonly minutes: number;
  /** Minutes of it that are no work at the book. */
  readonly aside: number;
  /** Minutes before its end that are planned for nobody: who is late catches up. */
  readonly buffer: number;
}
