import type { Kit } from "../../../core/kit/kit.ts";
import { formatSize } from "../../../words/lengths.ts";
import type { Figure } from "../pocket-figure.ts";
import { type At, BOARD, CUT, diagram, FAINT, PAPER, THIN, torn } from "./ink.ts";
import { type Pen, penFor } from "./pen.ts";

const TOP = 5;
const GUTTER = 13;
const PILE = { left: 57, right: 72, middle: 24 };

/** What is measured on a book: a leaf's height and width, and the pressed leaves without the boards. */
export function measureBook(kit: Kit): Figure {
  const { book, units } = kit;
  const size = (mm: number): string => formatSize(mm, units);
  const label = `Measuring the book. Leaf height, head to tail: ${size(book.leafHeight)}. Leaf width, fore-edge to gutter: ${size(book.leafWidth)}. Thickness of all ${book.leaves} leaves pressed together, without the boards: ${size(book.blockThickness)}. ${book.leaves} leaves are ${2 * book.leaves} pages.`;
  const pen = penFor(book.direction);
  const scale = Math.min(45 / book.leafHeight, 31 / book.leafWidth);
  const right = GUTTER + book.leafWidth * scale;
  const foot = TOP + book.leafHeight * scale;
  const parts = [
    openLeaf(pen, right, foot, book.square * scale),
    pen.down(right + 8, TOP, foot, `leaf height ${size(book.leafHeight)}`, { from: right }),
    pen.across(GUTTER, right, foot + 7.5, `leaf width ${size(book.leafWidth)}`, { from: foot }),
    pressedPile(pen, Math.min(16, Math.max(5, book.blockThickness * 0.5)), size(book.blockThickness)),
    pen.words([66, 48], `${book.leaves} leaves`, { anchor: "middle", bold: true }),
    pen.words([66, 52], `= ${2 * book.leaves} pages`, { anchor: "middle" }),
  ];
  return diagram(Math.max(foot + 10, 56), label, parts);
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
    pen.box([GUTTER, TOP], [right, foot], PAPER, CUT),
    pen.words([middle[0], TOP + 4], "head", { anchor: "middle" }),
    pen.words([middle[0], foot - 1.8], "tail", { anchor: "middle" }),
    pen.upright([GUTTER + 2.4, middle[1]], "gutter"),
    pen.upright([right - 2.4, middle[1]], "fore-edge"),
    pen.words([middle[0], middle[1] + 1], "one leaf", { anchor: "middle" }),
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
    pen.words([right + 6, middle + 18.8], `thickness ${words}`, { anchor: "end" }),
    pen.words([right + 6, middle - 19.4], "pressed,", { anchor: "end" }),
    pen.words([right + 6, middle - 16], "without boards", { anchor: "end" }),
  ].join("");
}
