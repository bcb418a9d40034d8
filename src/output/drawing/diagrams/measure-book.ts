import type { Kit } from "../../../core/kit/kit.ts";
import { formatSize } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import type { Figure } from "../figure.ts";
import { type At, BOARD, diagram, FAINT, PAPER, THIN, torn } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

const TOP = 5;
const GUTTER = 13;
const PILE = { left: 57, right: 72, middle: 24 };

/** Room for the words above the pile. */
const PRESSED_WORDS = 22;

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
    pressedPile(pen, Math.min(14, Math.max(5, book.blockThickness * 0.5)), thickness),
    pen.words([66, 48], say.drawMeasureLeaves({ leaves }), { anchor: "middle", bold: true }),
    pen.words([66, 52], say.drawMeasurePages({ pages }), { anchor: "middle" }),
  ]);
}

/** A leaf of the opened book with a strip of the page before it. */
function openLeaf(pen: Pen, right: number, foot: number, square: number): string {
  const middle: At = [(GUTTER + right) / 2, (TOP + foot) / 2];
  return [
    pen.shape(
      [[right + square, TOP - square], [right + square, foot + square], ...torn(3, foot + square, TOP - square)],
      BOARD,
      THIN,
    ),
    pen.shape([[GUTTER, TOP], [GUTTER, foot], ...torn(3, foot, TOP)], "#ffffff", FAINT),
    pen.box([GUTTER, TOP], [right, foot], PAPER),
    pen.words([middle[0], TOP + 4], say.drawHead(), { anchor: "middle" }),
    pen.words([middle[0], foot - 1.8], say.drawTail(), { anchor: "middle" }),
    pen.upright([GUTTER + 2.4, middle[1]], say.drawGutter()),
    pen.upright([right - 2.4, middle[1]], say.drawForeEdge()),
    pen.words([middle[0], middle[1] + 1], say.drawMeasureOneLeaf(), { anchor: "middle" }),
  ].join("");
}

/** The leaves from the head edge, pressed, boards turned away. */
function pressedPile(pen: Pen, thickness: number, words: string): string {
  const { left, right, middle } = PILE;
  const top = middle - thickness / 2;
  const foot = middle + thickness / 2;
  const sheets = Array.from({ length: 5 }, (_, i) => top + (thickness * (i + 1)) / 6);
  const board = (y: number, lift: number): string =>
    pen.shape(
      [
        [left - 1, y],
        [right + 1, y + lift],
        [right + 1, y + lift + Math.sign(lift) * 1.3],
        [left - 1, y + Math.sign(lift) * 1.3],
      ],
      BOARD,
      THIN,
    );
  const at = right + 3.6;
  return [
    board(top - 0.6, -6),
    board(foot + 0.6, 6),
    pen.shape([[right, top], [right, foot], ...torn(left, foot, top)], PAPER, THIN),
    ...sheets.map((y) => pen.segment(left + 1, y, right, y, FAINT)),
    pen.arrow(right - 4, top - 5, right - 4, top - 0.4),
    pen.arrow(right - 4, foot + 5, right - 4, foot + 0.4),
    ...[top, foot].map((y) => pen.segment(right + 0.7, y, at + 1, y, THIN)),
    ...[top, foot].map((y) => pen.segment(at - 1, y, at + 1, y, THIN)),
    pen.segment(at, top, at, middle + 15.6, THIN),
    pen.words([right + 6, middle + 18.8], say.drawMeasureThickness({ thickness: words }), { anchor: "end" }),
    pen.wrapped([right + 6, middle - 19.4], say.drawMeasurePressed(), PRESSED_WORDS, { anchor: "end" }),
  ].join("");
}
