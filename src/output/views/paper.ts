import { MM_PER_INCH } from "../../core/units/length.ts";
import { SHEET } from "../drawing/sheets/true-scale.ts";

/** A paper that packets are printed on, upright; mm. */
export interface Paper {
  readonly name: "a4" | "letter";
  readonly label: string;
  readonly width: number;
  readonly height: number;
}

/** A4 by ISO 216; US Letter 8.5 × 11 in. */
export const PAPERS: readonly Paper[] = [
  { name: "a4", label: "A4", width: 210, height: 297 },
  { name: "letter", label: "US Letter", width: 8.5 * MM_PER_INCH, height: 11 * MM_PER_INCH },
];

/** Chromium rounds page boxes to 0.24 pt, so the content box is a little higher than the sheet; mm. */
const ROUNDING = 1;

/** The page rule of a paper: the same content box of 182 × 245 mm on each, and the footer. */
export function pageRule(paper: Paper, footer: string): string {
  const side = (paper.width - SHEET.width) / 2;
  const spare = paper.height - SHEET.height - ROUNDING;
  const top = spare * 0.42;
  const words = footer.replaceAll(/\s+/g, " ").replaceAll(/["\\]/g, "\\$&");
  const type = "font: 8.5pt 'Source Sans 3', sans-serif; color: #444; vertical-align: top; padding-top: 3mm;";
  return `@page { size: ${paper.width}mm ${paper.height}mm; margin: ${top}mm ${side}mm ${spare - top}mm;
    @bottom-left { content: "${words}"; ${type} white-space: nowrap; }
    @bottom-right { content: "page " counter(page) " of " counter(pages); ${type} } }`;
}
