import type { Book } from "../book/book.ts";
import { type LeafNumber, leafNumber } from "../book/leaf-number.ts";
import type { LeafName } from "../book/numbering.ts";
import type { Viewpoint } from "../fan/front.ts";
import type { Level } from "../kit/kit.ts";
import type { Pocket } from "../light/light.ts";
import type { FoldStyle, KnifeStyle } from "../spans/fold-style.ts";
import type { Cut, MergedSpan, Span } from "../spans/span.ts";
import type { Tack } from "../spans/tacks.ts";
import type { BookWindow } from "../window/window.ts";

/** The kit matched to its book. Lengths mm, angles radians. */
export interface Fit<Style extends FoldStyle = KnifeStyle> {
  readonly firstLeaf: LeafNumber;
  readonly lastLeaf: LeafNumber;
  readonly opening: number;
  readonly spine: "flat" | "rounded";
  readonly view: Viewpoint;
  readonly head: number;
  readonly height: number;
  readonly width: number;
  /** Displayed width over the width that keeps the drawn shape; 1 is true. */
  readonly stretch: number;
  /** Front tips of the first and last picture leaf, straight. */
  readonly tipWidth: number;
  /** Folded edges of the first and last picture leaf at the head edge, straight: where a ruler can be laid. */
  readonly holdWidth: number;
  /** Fore-edges of the boards, straight. */
  readonly boardWidth: number;
  /** The opening below which the folded book will not close. */
  readonly restingOpening: number;
  readonly foldStyle: Style;
  readonly markStep: number;
  readonly leastTab: number;
}

/** One folded leaf, however it is folded. */
export interface PatternLeafBase {
  readonly leaf: LeafNumber;
  /** 1, 3, 5 … on picture leaves, null on border leaves. */
  readonly patternPage: number | null;
  /** Printed recto, null where the leaf is unnumbered. */
  readonly bookPage: number | null;
  readonly name: LeafName;
}

/** One leaf that is cut and folded. */
export interface PatternLeaf extends PatternLeafBase {
  /** Front-view x of the tip at each level. */
  readonly x: readonly number[];
  readonly spans: readonly Span[];
  readonly cuts: readonly Cut[];
  readonly tacks: readonly Tack[];
}

export interface MergedOnLeaf extends MergedSpan {
  readonly leaf: LeafNumber;
}

/** What a pattern says of its book, whichever way its leaves are made. Lengths mm. */
export interface PatternBase {
  readonly book: Book;
  readonly levels: readonly Level[];
  /** Number of the background level, from 1. */
  readonly background: number;
  readonly fit: Fit<FoldStyle>;
  readonly leaves: readonly PatternLeafBase[];
  readonly merged: readonly MergedOnLeaf[];
  /** Leaves that are left out because they were skipped or torn. */
  readonly lostLeaves: readonly LeafNumber[];
}

/** Everything that a maker needs to mark, cut and fold; in book order. */
export interface Pattern extends PatternBase {
  /** Only a kit that is folded by corners has it. */
  readonly corner?: undefined;
  readonly fit: Fit;
  readonly leaves: readonly PatternLeaf[];
  /** Room for the light, where the kit has one. */
  readonly pocket: Pocket | undefined;
  /** The window, where the kit has one. */
  readonly window: BookWindow | undefined;
}

/** Leaves of the book that are there, from 0, first to last: lost ones are gone. */
export function leavesInBook({ book, lostLeaves }: Pick<PatternBase, "book" | "lostLeaves">): number[] {
  return Array.from({ length: book.leaves }, (_, j) => j).filter((j) => !lostLeaves.includes(leafNumber(j + 1)));
}

/** The same from the viewer's left to her right. */
export function leavesFromLeft(pattern: Pick<PatternBase, "book" | "lostLeaves">): number[] {
  const inBook = leavesInBook(pattern);
  return pattern.book.direction === "ltr" ? inBook : inBook.toReversed();
}

/** The leaves that carry the picture. */
export function pictureLeaves<Leaf extends PatternLeafBase>(pattern: { readonly leaves: readonly Leaf[] }): Leaf[] {
  return pattern.leaves.filter((leaf) => leaf.patternPage !== null);
}

/** Depth of each level, mm, front to back. */
export function depthsOf(levels: readonly Level[]): number[] {
  return levels.map((level) => level.depth);
}
