import type { FoldStyle } from "../spans/fold-style.ts";
import type { Margins } from "./margins.ts";
import type { Quality } from "./quality.ts";
import type { Refit } from "./refit.ts";

/** One thing that an offer changes. Lengths mm. */
export type OfferedChange =
  | { readonly kind: "height"; readonly height: number }
  | { readonly kind: "opening"; readonly degrees: number }
  | { readonly kind: "borders"; readonly before: number; readonly after: number }
  /** Of a kit that states how many. */
  | { readonly kind: "picture-leaves"; readonly leaves: number }
  | { readonly kind: "depths"; readonly depths: readonly number[] }
  | { readonly kind: "folds"; readonly foldStyle: FoldStyle }
  | { readonly kind: "light-width"; readonly diameter: number }
  | { readonly kind: "light-height"; readonly height: number }
  | {
      /** Another book of the same paper, with at least or at most so many leaves. */
      readonly kind: "book";
      readonly bound: "least" | "most";
      readonly leaves: number;
      readonly thickness: number;
    };

/** A way to make a kit in a book that it does not fit, or fits poorly. */
export interface Offer {
  /** What it changes, all of it together. */
  readonly says: readonly OfferedChange[];
  readonly refit: Refit;
  /** Whether it asks for another book than the reader's. */
  readonly otherBook: boolean;
  /** Whether its flaps push the book open beyond flat. */
  readonly springsOpen: boolean;
  /** How well the kit comes out with it, and the minutes that it takes. */
  readonly quality: Quality;
  readonly minutes: number;
  /** Paper that stays free at head and tail, mm. */
  readonly margins: Margins;
}

/** What an offer changes of the reader's figures. */
export interface Change {
  readonly says: readonly OfferedChange[];
  readonly change: Partial<Refit>;
}

/** Whether a kit can be laid out with a change. */
export type Fits = (change: Partial<Refit>) => boolean;
