import type { LeafNumber } from "../book/leaf-number.ts";
/** Why a text is no progress that can be used here. */
export type ProgressFailure =
  | { readonly kind: "not-json" }
  /** `given` is what stands for the schema's name, as JSON; undefined where nothing does. */
  | { readonly kind: "other-schema"; readonly given: string | undefined; readonly expected: string }
  | { readonly kind: "other-kit"; readonly kit: string; readonly wanted: string }
  /** Only the fit differs: `fit` is the address parameters of its book. */
  | { readonly kind: "other-fit"; readonly fit: string }
  /** A piece whose progress is of another kit; `path` is the piece's. */
  | { readonly kind: "mixed-kits"; readonly path: string; readonly kit: string; readonly given: string }
  /** A piece that stands twice in a file. */
  | { readonly kind: "piece-twice"; readonly path: string }
  | { readonly kind: "too-many"; readonly most: number }
  | { readonly kind: "twice"; readonly path: string; readonly leaf: LeafNumber }
  /** `path` is like `ticks[0][1]`, empty for the file itself; `given` as JSON, cut off where it is long, undefined where it is missing. */
  | {
      readonly kind: "wrong-value";
      readonly path: string;
      readonly given: string | undefined;
      readonly allowed: ProgressValue;
    };

/**
 * What may stand at a place of a file of progress or of pieces: a leaf is a whole number within `BOUNDS.leaf`, an amount 0 or
 * more, a thickness more than 0, a count a whole number. Texts have bounds, too: `PIECE_LENGTHS`.
 */
export type ProgressValue =
  | "object"
  | "list"
  | "text"
  | "leaf"
  | "amount"
  | "thickness"
  | "count"
  | "percent"
  | "id"
  | "slug"
  | "instant"
  | "short"
  | "notes"
  | "address";
