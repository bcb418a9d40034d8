import { fileNames } from "../file-name.ts";
import type { SheetSize } from "../kit/kit.ts";
import { MM_PER_INCH } from "../units/length.ts";

/** Sheets by name: A4 (ISO 216), US Letter, and the 12 × 12 in of craft shops; upright, mm. */
export const SHEET_SIZES = {
  a4: { name: "A4", width: 210, height: 297 },
  letter: { name: "Letter", width: 8.5 * MM_PER_INCH, height: 11 * MM_PER_INCH },
  "12x12": { name: "12 × 12 in", width: 12 * MM_PER_INCH, height: 12 * MM_PER_INCH },
} as const satisfies Readonly<Record<string, SheetSize>>;

export type SheetName = keyof typeof SHEET_SIZES;

export const SHEET_NAMES = Object.keys(SHEET_SIZES) as [SheetName, ...SheetName[]];

/** What the files of each sheet are called. */
export function sheetNames(sheets: readonly SheetSize[]): string[] {
  return fileNames(
    sheets.map(({ name }) => name),
    "own",
  );
}
