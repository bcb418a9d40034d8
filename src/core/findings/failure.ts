import type { LeafNumber } from "../book/leaf-number.ts";
import type { Viewpoint } from "../fan/front.ts";
import type { FoldStyle } from "../spans/fold-style.ts";

/**
 * Why a kit cannot be made on a book as it stands. Lengths mm, angles radians, leaves and pages as people count them, levels
 * by number from 1. Nothing here is prose: words/findings says it to an author, a reader or a teacher.
 */
export type Failure =
  | BookFailure
  | LevelFailure
  | FitFailure
  | FlapFailure
  | CornerFailure
  | LostLeafFailure
  | FlatPicture
  | LightFailure
  | LightNearWindow
  | WindowFailure;

/** The book's own figures contradict each other, or leave no room for the picture. */
export type BookFailure =
  | {
      readonly kind: "pages-need-more-leaves";
      readonly lastPage: number;
      readonly leaves: number;
      readonly pageOneLeaf: LeafNumber;
      readonly needed: number;
    }
  | {
      /** Page 1 or the plates stand where no leaf is left for a printed page. */
      readonly kind: "no-page";
      readonly pageOneLeaf: LeafNumber;
      /** Unnumbered leaves between the pages. */
      readonly plates: number;
      readonly leaves: number;
    }
  | {
      readonly kind: "plates-after-last-page";
      /** Which of the plates, from 1. */
      readonly entry: number;
      readonly afterPage: number;
      readonly lastPage: number;
    }
  | {
      readonly kind: "too-few-leaves";
      readonly before: number;
      /** Fewest picture leaves, or as many as are asked for. */
      readonly picture: number;
      readonly after: number;
      readonly leaves: number;
      /** Picture leaves that the borders leave; below 2 none can. */
      readonly most: number;
    };

/** A level would not lie deeper than the one before it: no fold can make that. */
export interface LevelFailure {
  readonly kind: "levels-out-of-order";
  readonly level: number;
  readonly depth: number;
  /** Depth of the level before it. */
  readonly before: number;
}

/** A flap would run into the gutter. */
export interface FlapFailure {
  readonly kind: "flap-in-gutter";
  readonly level: number;
  readonly depth: number;
  /** How far inward the flap reaches. */
  readonly reach: number;
  readonly leafWidth: number;
  readonly clearance: number;
  readonly deepest: number;
  readonly foldStyle: FoldStyle;
}

/** What keeps a kit from being folded by corners, without a knife. */
export type CornerFailure =
  | {
      /** Room for a light is cut, and so are the leaves behind a window. */
      readonly kind: "needs-knife";
      readonly part: "light" | "window";
    }
  /** The background is among the levels that are shown, so there is no outline to fold. */
  | { readonly kind: "background-shown"; readonly level: number }
  | {
      readonly kind: "no-room-for-corners";
      readonly leafWidth: number;
      readonly clearance: number;
      /** How far inward a folded corner reaches at least. */
      readonly least: number;
    }
  /** No leaf has a stretch of the picture that is long enough. */
  | { readonly kind: "nothing-to-show"; readonly height: number; readonly leastTab: number };

/** No opening, height or count of leaves shows the picture in its shape, or not on the leaf. */
export type FitFailure =
  | { readonly kind: "opening-too-wide"; readonly opening: number; readonly widest: number; readonly view: Viewpoint }
  | {
      readonly kind: "picture-off-leaf";
      readonly head: number;
      readonly height: number;
      readonly leafHeight: number;
      /** The height that there is room for. */
      readonly room: number;
      readonly heightSolved: boolean;
      readonly headStated: boolean;
    }
  | {
      readonly kind: "picture-too-narrow";
      readonly height: number;
      readonly width: number;
      readonly leaves: number;
      /** Width of the closed picture leaves, and the height that fills it; Infinity where the leaf has no room for that. */
      readonly least: number;
      readonly leastHeight: number;
    }
  | {
      readonly kind: "picture-too-wide";
      readonly height: number;
      readonly width: number;
      readonly leaves: number;
      readonly widest: number;
      /** Greatest width at the opening that shows most, and the height that it allows. */
      readonly most: number;
      readonly mostHeight: number;
      /** Picture leaves that would show it; undefined where no count of this book does. */
      readonly enough: number | undefined;
    }
  | {
      readonly kind: "leaves-show-too-little";
      readonly height: number;
      readonly width: number;
      readonly opening: number;
      readonly leaves: number;
      readonly most: number;
      readonly mostHeight: number;
      /** Opening at which all leaves show it; undefined where none does. */
      readonly openingNeeded: number | undefined;
    };

export type LostLeafFailure =
  | {
      readonly kind: "lost-leaf-outside";
      readonly leaf: LeafNumber;
      readonly first: LeafNumber;
      readonly last: LeafNumber;
    }
  | { readonly kind: "too-few-remain"; readonly lost: number; readonly leaves: number };

/** No leaf is cut: the picture's shapes are too small here, or are not there. */
export interface FlatPicture {
  readonly kind: "picture-flat";
  readonly height: number;
  /** Strips shorter than this are merged with the next. */
  readonly leastTab: number;
}

/** What keeps a light from standing in the book. */
export type Obstacle =
  | { readonly kind: "nowhere-wide"; readonly need: number }
  | { readonly kind: "level-absent"; readonly floor: number }
  | { readonly kind: "above-head"; readonly by: number }
  | { readonly kind: "little-paper"; readonly leaf: LeafNumber; readonly remaining: number; readonly least: number };

export interface LightFailure {
  readonly kind: "no-room-for-light";
  readonly level: number;
  readonly diameter: number;
  readonly height: number;
  readonly clearance: number;
  readonly obstacle: Obstacle;
  /** The widest of its height, the highest of its width; 0 where none stands. */
  readonly largest: { readonly diameter: number; readonly height: number };
}

/** The light would come too near to the closed window. */
export interface LightNearWindow {
  readonly kind: "light-near-window";
  readonly free: number;
  readonly clearance: number;
  /** How much more setback would do. */
  readonly more: number;
  readonly panel: "wrap" | "flat";
}

/** The window cannot be cut. */
export type WindowFailure =
  | { readonly kind: "outline-hidden"; readonly level: number }
  | {
      readonly kind: "hole-breaks";
      readonly level: number;
      readonly lip: number;
      /** Whether the hole closes up, or falls into pieces. */
      readonly closes: boolean;
      /** The greatest lip that leaves one hole, and the least that holds. */
      readonly most: number;
      readonly least: number;
    }
  | {
      readonly kind: "no-hinge";
      readonly level: number;
      readonly side: "left" | "right";
      readonly shortest: number;
      readonly bulge: number;
    }
  | { readonly kind: "glazing-too-small"; readonly level: number; readonly lip: number; readonly overlap: number };

const LIGHT: readonly Failure["kind"][] = ["no-room-for-light", "light-near-window"];

const CONTRADICTIONS: readonly Failure["kind"][] = ["pages-need-more-leaves", "no-page", "plates-after-last-page"];

/** Whether figures of the book contradict each other: they are to be read again, and no other picture helps. */
export function isContradiction({ kind }: Failure): boolean {
  return CONTRADICTIONS.includes(kind);
}

/** Whether a smaller light, or one that stands further back, is what helps. */
export function isOfLight(failure: Failure): failure is LightFailure | LightNearWindow {
  return LIGHT.includes(failure.kind);
}
