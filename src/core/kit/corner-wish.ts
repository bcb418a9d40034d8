/**
 * How a leaf is folded that shows nothing of the picture: straight at the background's line, straight with its fore-edge laid
 * to the gutter, or by both corners to its middle.
 */
export const EMPTY_FOLDS = ["line", "half", "middle"] as const;

export type EmptyFold = (typeof EMPTY_FOLDS)[number];

/** What a kit that is folded only has to leave out. */
export type WithoutKnife = "light" | "window";

/** What a kit asks of its leaves where they are folded by corners. */
export interface CornerWish {
  /** The levels that are shown, by number from the front: the first, and those joined to it. */
  readonly levels: readonly number[];
  readonly empty: EmptyFold;
  /** What was left out of a kit that is cut otherwise. */
  readonly dropped: readonly WithoutKnife[];
}

/** The front level alone; other leaves as border leaves are. */
export const PLAIN_CORNERS: CornerWish = { levels: [1], empty: "line", dropped: [] };
