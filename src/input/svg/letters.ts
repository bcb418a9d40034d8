import type { Ring } from "../../core/geometry/point.ts";

/** How words are set, in user units of the picture. */
export interface LetterStyle {
  /** Names of families, the wished one first, as CSS lists them. */
  readonly families: readonly string[];
  /** Of the font, > 0. */
  readonly size: number;
  /** 1…1000; 400 is regular. */
  readonly weight: number;
  readonly italic: boolean;
}

/** Words as outlines under the nonzero rule. */
export interface SetWords {
  /** The pen begins at 0,0 on the base line; x to the right, y down. */
  readonly rings: readonly Ring[];
  /** How far the pen goes to the right. */
  readonly advance: number;
}

/** Sets one line of words; undefined where none of the families is at hand. */
export type Letters = (text: string, style: LetterStyle) => SetWords | undefined;
