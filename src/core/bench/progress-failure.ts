import type { LeafNumber } from "../book/leaf-number.ts";
/** Why a text is no progress that can be used here. */
export type ProgressFailure =
  | { readonly kind: "not-json" }
  /** `given` is what stands for the schema's name, as JSON; undefined where nothing does. */
  | { readonly kind: "other-schema"; readonly given: string | undefined; readonly expected: string }
  | { readonly kind: "other-kit"; readonly kit: string; readonly wanted: string }
  /** Only the fit differs: `fit` is the address parameters of its book. */
  | { readonly kind: "other-fit"; readonly fit: string }
  | { readonly kind: "twice"; readonly path: string; readonly leaf: LeafNumber }
  /** `path` is like `ticks[0][1]`, empty for the file itself; `given` as JSON, cut off where it is long, undefined where it is missing. */
  | {
      readonly kind: "wrong-value";
      readonly path: string;
      readonly given: string | undefined;
      readonly allowed: ProgressValue;
    };

/** What may stand at a place of a progress file: a leaf is a whole number from 1 to 5000, an amount 0 or more, a thickness more than 0. */
export type ProgressValue = "object" | "list" | "text" | "leaf" | "amount" | "thickness";
