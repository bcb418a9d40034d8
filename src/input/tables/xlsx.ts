import type { Element } from "@xmldom/xmldom";
import type { SheetRow } from "./sheet-row.ts";
import { allNamed, attributeOf, BrokenPart, childrenNamed, rootOf } from "./xml-part.ts";

/** Parts of a workbook that its first sheet is read from. Source: ECMA-376, part 1. */
export const XLSX_PARTS =
  /^xl\/(?:workbook\.xml|_rels\/workbook\.xml\.rels|sharedStrings\.xml|worksheets\/[^/]+\.xml)$/;

/** The rows of a workbook's first sheet. @throws BrokenPart */
export function xlsxRows(parts: ReadonlyMap<string, string>): SheetRow[] {
  const strings = parts.get("xl/sharedStrings.xml");
  const shared = strings === undefined ? [] : childrenNamed(rootOf(strings), "si").map(richText);
  const sheet = rootOf(parts.get(firstSheet(parts)));
  const rows = childrenNamed(sheet, "sheetData").flatMap((data) => childrenNamed(data, "row"));
  let before = 0;
  return rows.map((row) => {
    before = placeIn(attributeOf(row, "r"), before);
    return { row: before, cells: cellsOf(row, shared) };
  });
}

/** The path of the sheet that stands first in the workbook's order. */
function firstSheet(parts: ReadonlyMap<string, string>): string {
  const [sheet] = allNamed(rootOf(parts.get("xl/workbook.xml")), "sheet");
  const relations = childrenNamed(rootOf(parts.get("xl/_rels/workbook.xml.rels")), "Relationship");
  const id = sheet && [...sheet.attributes].find(({ name }) => name.endsWith(":id"))?.value;
  const target = relations.find((one) => attributeOf(one, "Id") === id);
  const path = target && attributeOf(target, "Target");
  if (path === undefined) throw new BrokenPart();
  return path.startsWith("/") ? path.slice(1) : `xl/${path}`;
}

function cellsOf(row: Element, shared: readonly string[]): Map<number, string> {
  const cells = new Map<number, string>();
  let before = 0;
  for (const cell of childrenNamed(row, "c")) {
    before = columnIn(attributeOf(cell, "r"), before);
    cells.set(before, cellText(cell, shared));
  }
  return cells;
}

function cellText(cell: Element, shared: readonly string[]): string {
  const type = attributeOf(cell, "t");
  if (type === "inlineStr") return childrenNamed(cell, "is").map(richText).join("");
  const value = childrenNamed(cell, "v")[0]?.textContent ?? "";
  if (type === "s") return shared[Number(value)] ?? "";
  // A number as it was typed: the file may have it to seventeen digits.
  return type === undefined || type === "n" ? numberText(value) : value;
}

function numberText(value: string): string {
  return value.trim() === "" || !Number.isFinite(Number(value)) ? value : String(Number(value));
}

/** A text of one or several runs; readings of characters (`rPh`) are no part of it. */
function richText(element: Element): string {
  const runs = childrenNamed(element, "t", "r");
  return runs.map((run) => (run.localName === "t" ? (run.textContent ?? "") : richText(run))).join("");
}

/** The number that a row states, or the next. */
function placeIn(stated: string | undefined, before: number): number {
  return stated === undefined ? before + 1 : Number(stated);
}

/** The column, from 1, of a cell called `C4`, or the next. */
function columnIn(stated: string | undefined, before: number): number {
  const letters = /^[A-Z]{1,3}/.exec(stated ?? "")?.[0];
  return letters === undefined
    ? before + 1
    : [...letters].reduce((sum, letter) => 26 * sum + letter.charCodeAt(0) - 64, 0);
}
