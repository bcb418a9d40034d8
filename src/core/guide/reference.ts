/** What there is a table of keys of: a file that people write, by its schema. */
export const REFERENCES = ["kit", "class", "books", "settings", "catalogue", "cautions", "guide"] as const;

export type ReferenceName = (typeof REFERENCES)[number];

/** All keys of a file, in groups: those at its top, then those of each key that holds keys. */
export type Reference = readonly ReferenceGroup[];

export interface ReferenceGroup {
  /** The key that holds these keys, `fit` or `book.plates[]`; empty at the top. */
  readonly path: string;
  readonly about: string;
  readonly keys: readonly ReferenceKey[];
}

export interface ReferenceKey {
  /** All keys that lead to it: `book.plates[].leaves`. */
  readonly path: string;
  readonly about: string;
  readonly allowed: readonly Allowed[];
  readonly usual: Usual;
  /** The group with the keys that it holds. */
  readonly group: string | undefined;
}

/** What holds where a key is left out. */
export type Usual =
  | { readonly kind: "required" }
  | { readonly kind: "none" }
  /** As it would be typed. */
  | { readonly kind: "typed"; readonly text: string }
  /** In words. */
  | { readonly kind: "said"; readonly text: string };

export type Measure = "mm" | "degrees" | "seconds" | "minutes";

/** One of the forms that a value may have. Bounds are included. */
export type Allowed =
  | { readonly kind: "length"; readonly least: number; readonly most: number }
  | ({ readonly kind: "number"; readonly whole: boolean; readonly measure: Measure | undefined } & NumberBounds)
  | { readonly kind: "words"; readonly words: readonly string[] }
  /** A text of at most so many characters. */
  | { readonly kind: "text"; readonly most: number | undefined }
  | { readonly kind: "day" | "address" | "flag" | "keys" }
  | {
      readonly kind: "list";
      readonly least: number;
      readonly most: number | undefined;
      readonly of: readonly Allowed[];
    }
  /** A value for each of these names, or for names of the author's own. */
  | { readonly kind: "named"; readonly names: readonly string[]; readonly of: readonly Allowed[] };

export interface NumberBounds {
  readonly least: number | undefined;
  readonly most: number | undefined;
  /** Without the number itself. */
  readonly above: number | undefined;
}
