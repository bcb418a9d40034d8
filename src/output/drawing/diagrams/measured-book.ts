import * as say from "../../../words/messages.ts";
import { type At, BOARD, FAINT, PAPER, THIN, torn } from "./ink.ts";
import type { Pen } from "./pen.ts";

/** Where a leaf's head edge and its gutter are drawn, and the pressed leaves beside it. */
export const TOP = 5;
export const GUTTER = 13;
export const PILE = { left: 57, right: 72, middle: 24 };

/** Room for the words above the pile. */
const PRESSED_WORDS = 22;

/** A leaf of the opened book with a strip of the page before it. */
export function openLeaf(pen: Pen, right: number, foot: number, square: number): string {
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

/** The leaves from the head edge, pressed, boards turned away; the words stand below. */
export function pressedPile(pen: Pen, thickness: number, words: string, place: typeof PILE = PILE): string {
  const { left, right, middle } = place;
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
    pen.words([right + 6, middle + 18.8], words, { anchor: "end" }),
    pen.wrapped([right + 6, middle - 19.4], say.drawMeasurePressed(), PRESSED_WORDS, { anchor: "end" }),
  ].join("");
}
