import { SHEET_SIZES } from "../../core/packing/sheet-sizes.ts";
import * as say from "../../words/messages.ts";
import type { PaperName } from "../../words/papers.ts";
import { SHEET } from "../drawing/sheets/true-scale.ts";

/** A paper that packets are printed on, upright; mm. */
export interface Paper {
  readonly name: PaperName;
  readonly width: number;
  readonly height: number;
}

export const PAPERS: readonly [Paper, Paper] = [
  { name: "a4", width: SHEET_SIZES.a4.width, height: SHEET_SIZES.a4.height },
  { name: "letter", width: SHEET_SIZES.letter.width, height: SHEET_SIZES.letter.height },
];

/** Chromium rounds page boxes to 0.24 pt, so the content box is a little higher than the sheet; mm. */
const ROUNDING = 1;

/** Height of a page's content box, mm. */
export const PAGE_ROOM = SHEET.height + ROUNDING;

/** Width of a footer, mm; beside it stands the page's number. */
export const FOOTER_WIDTH = 152;

/** How far a paper's content box stands from its head, its sides and its foot, mm. */
export function pageMargins({ width, height }: Paper): readonly [head: number, side: number, foot: number] {
  const spare = height - PAGE_ROOM;
  const head = spare * 0.42;
  return [head, (width - SHEET.width) / 2, spare - head];
}

/** The page rule of a paper: the same content box of 182 × 245 mm on each, and the footer. */
export function pageRule(paper: Paper, footer: string): string {
  const margins = pageMargins(paper).map((mm) => `${mm}mm`);
  const type = "font: 8.5pt 'Source Sans 3', sans-serif; color: #444; vertical-align: top; padding-top: 3mm;";
  return `@page { size: ${paper.width}mm ${paper.height}mm; margin: ${margins.join(" ")};
    @bottom-left { content: ${cssText(breakable(footer))}; ${type} width: ${FOOTER_WIDTH}mm; }
    @bottom-right { content: ${pageNumber()}; ${type} width: 30mm; } }`;
}

/** Words longer than this may break in the footer, where nothing else breaks them, in letters. */
const LONG_WORD = 40;

/** A footer that stays in its room whatever its words: long ones get places where they may break. */
function breakable(footer: string): string {
  return footer
    .split(" ")
    .map((word) => ([...word].length > LONG_WORD ? [...word].join("\u200b") : word))
    .join(" ");
}

/** The page's number in the words of the site; its figures are the browser's to count. */
function pageNumber(): string {
  const pieces = say.packetPageNumber({ page: "\uE000", pages: "\uE001" }).split(/([\uE000\uE001])/);
  const counters: Readonly<Record<string, string>> = { "\uE000": "counter(page)", "\uE001": "counter(pages)" };
  return pieces.map((piece) => counters[piece] ?? cssText(piece)).join(" ");
}

/** Text as a string of CSS. */
function cssText(text: string): string {
  return `"${text.replaceAll(/\s+/g, " ").replaceAll(/["\\]/g, "\\$&")}"`;
}
