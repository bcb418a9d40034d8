import type { Kit } from "../../../core/kit/kit.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { diagram } from "./ink.ts";
import { GUTTER, openLeaf, pressedPile, TOP } from "./measured-book.ts";
import { penFor } from "./pen.ts";

/** What is measured on a book: a leaf's height and width, and the pressed leaves without the boards. */
export function measureBook(kit: Kit): Figure {
  const { book, units } = kit;
  const { leaves } = book;
  const [height, width, thickness] = [book.leafHeight, book.leafWidth, book.blockThickness].map((mm) =>
    formatSize(mm, units),
  ) as [string, string, string];
  const pages = 2 * leaves;
  const pen = penFor(book.direction);
  const scale = Math.min(45 / book.leafHeight, 31 / book.leafWidth);
  const right = GUTTER + book.leafWidth * scale;
  const foot = TOP + book.leafHeight * scale;
  return diagram(Math.max(foot + 10, 56), say.drawMeasure({ height, width, thickness, leaves, pages }), [
    openLeaf(pen, right, foot, book.square * scale),
    pen.down(right + 8, TOP, foot, say.drawMeasureHeight({ height }), { from: right }),
    pen.across(GUTTER, right, foot + 7.5, say.drawMeasureWidth({ width }), { from: foot }),
    pressedPile(pen, Math.min(14, Math.max(5, book.blockThickness * 0.5)), say.drawMeasureThickness({ thickness })),
    pen.words([66, 48], say.drawMeasureLeaves({ leaves }), { anchor: "middle", bold: true }),
    pen.words([66, 52], say.drawMeasurePages({ pages }), { anchor: "middle" }),
  ]);
}
