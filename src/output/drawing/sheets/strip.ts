import type { PatternLeafBase } from "../../../core/pattern/pattern.ts";

/** Width of a strip, mm. */
export const STRIP = 6.9;

/** The tab that carries the leaf's name and hooks over the edge it is measured from, mm. */
export const TAB = 12;

/** Room for the sheet's heading and its instruction, mm. */
export const TITLE = 9.5;

/** Where the leaf begins on the sheet: at the fold of the tab. */
export const FOLD = TITLE + TAB;

/** The least letters, mm: 7 pt. */
export const SMALL = 2.5;

/** A stretch of the leaf that one sheet shows, mm from the head. */
export interface StripPart {
  readonly from: number;
  readonly to: number;
}

/** What a leaf's strip shows; all heights are the sheet's. */
export interface StripFace {
  readonly fields: readonly StripField[];
  readonly numbers: readonly LevelNumber[];
  readonly marks: readonly StripMark[];
  readonly slants: readonly Slant[];
  readonly notch: StripNotch | undefined;
}

/** A leaf's strip in its place. */
export interface Strip extends StripFace {
  readonly leaf: PatternLeafBase;
  /** Its left side. */
  readonly x: number;
}

/** A toned stretch. */
export interface StripField {
  readonly tone: string;
  readonly from: number;
  readonly to: number;
}

/** A level's number, a digit whose baseline is at `y`, and how high it is. */
export interface LevelNumber {
  readonly level: number;
  readonly y: number;
  readonly size: number;
}

/** A mark at `y`, with words whose baseline is at `foot`. */
export interface StripMark {
  readonly words: string;
  readonly y: number;
  readonly foot: number;
}

/** A slanting line that begins so far from the strip's left side and goes so far across and down. */
export interface Slant {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly down: number;
}

export interface StripNotch {
  readonly from: number;
  readonly to: number;
  readonly words: string;
}
