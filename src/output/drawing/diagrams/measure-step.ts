import type { PageCheck } from "../../../core/book/page-check.ts";
import * as say from "../../../words/messages.ts";
import { type Figure, figureOf } from "../figure.ts";
import { TEXT } from "./ink.ts";
import { GUTTER, openLeaf, PILE, pressedPile, TOP } from "./measured-book.ts";
import { penFor } from "./pen.ts";
import { EMPTY, type PageLines, SPREAD, spread } from "./spread.ts";

/** Where the leaf's fore-edge and tail are drawn. */
const LEAF = { right: 44, foot: 50, square: 1.5 };

/** Room beside an opened book for the leaves below it. */
const EDGE = 2;

/** An opened book, and the second one beside it. */
const FIRST = { left: EDGE, top: -6, width: SPREAD };
const SECOND = { ...FIRST, left: SPREAD + 3 * EDGE };

/** What is counted: the leaf with page 1, and the last page with a number. */
export function pagesStep(): Figure {
  const lines = (...top: string[]): PageLines => ({ top, foot: "" });
  return drawn(2 * SPREAD + 4 * EDGE, 34, say.measureDrawPages(), [
    spread(penFor("ltr", FIRST), EMPTY, lines(say.measureDrawPageOne()), "right"),
    spread(penFor("ltr", SECOND), lines(say.measureDrawLast(), "284"), EMPTY, "left"),
  ]);
}

/** A leaf whose number and page are compared. */
export function checkStep({ leaf, page }: PageCheck): Figure {
  const right = { top: [say.leafNumber({ leaf }), say.leafPage({ page })], foot: "" };
  return drawn(SPREAD + 2 * EDGE, 34, say.measureDrawCheck({ leaf, page }), [
    spread(penFor("ltr", FIRST), EMPTY, right, "right"),
  ]);
}

/** One length of a book: of a leaf, or of all of them pressed. */
export function lengthStep(length: "leafHeight" | "leafWidth" | "blockThickness"): Figure {
  const pen = penFor("ltr", { left: -2, top: -3, width: 80 });
  const { right, foot, square } = LEAF;
  const leaf = openLeaf(pen, right, foot, square);
  switch (length) {
    case "leafHeight":
      return drawn(56, foot, say.measureDrawHeight(), [
        leaf,
        pen.down(right + 9, TOP, foot, say.measureDrawThis(), { from: right, side: "right" }),
      ]);
    case "leafWidth":
      return drawn(56, foot + 7, say.measureDrawWidth(), [
        leaf,
        pen.across(GUTTER, right, foot + 8, say.measureDrawThis(), { from: foot }),
      ]);
    case "blockThickness":
      return drawn(40, 44, say.measureDrawThickness(), [
        pressedPile(penFor("ltr", { left: -41, top: -2, width: 80 }), 13, say.measureDrawThis(), { ...PILE, left: 46 }),
      ]);
  }
}

/** A figure that is larger on a screen than a diagram beside a text: it has no room to spare. */
function drawn(width: number, height: number, label: string, parts: readonly string[]): Figure {
  return figureOf({ left: 0, top: 0, width, height }, label, parts.join(""), { class: "figure", "font-size": TEXT });
}
