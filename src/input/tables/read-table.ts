import * as say from "../../words/messages.ts";
import { contentKind } from "../files/content-kind.ts";
import { toldOfFile } from "../files/file-message.ts";
import { readBeginning, readBytes, readText } from "../files/read-file.ts";
import type { SiteFile } from "../files/site-file.ts";
import { readDelimited } from "./delimited.ts";
import { ODS_PART, odsRows } from "./ods.ts";
import type { SheetRow } from "./sheet-row.ts";
import { tableError } from "./table-error.ts";
import type { TableRow } from "./table-row.ts";
import { unpack } from "./unpack.ts";
import { XLSX_PARTS, xlsxRows } from "./xlsx.ts";
import { BrokenPart } from "./xml-part.ts";

/** How the names of tables end. */
export const TABLE_ENDINGS: readonly string[] = [".csv", ".tsv", ".txt", ".xlsx", ".ods"];

/** Parts of an archive that are read, of one format or the other. */
const PARTS = new RegExp(`${XLSX_PARTS.source}|^${ODS_PART.replace(".", "\\.")}$`);

/** The filled rows of a table: text, or the first sheet of a workbook (XLSX) or of an OpenDocument spreadsheet. @throws KitError */
export function readTable(source: SiteFile): TableRow[] {
  const kind = contentKind(toldOfFile(() => readBeginning(source)));
  if (kind !== "zip")
    return readDelimited(
      source.file,
      toldOfFile(() => readText(source)),
    );
  const parts = unpack(
    toldOfFile(() => readBytes(source)),
    PARTS,
  );
  const rows = parts && sheetRows(parts);
  if (!rows) throw tableError(source.file, undefined, say.frontSheetBroken(), say.frontSheetForms());
  return rows.map(tableRow).filter(({ cells }) => cells.some((cell) => cell !== ""));
}

/** Undefined where they are of no spreadsheet. */
function sheetRows(parts: ReadonlyMap<string, string>): SheetRow[] | undefined {
  try {
    return parts.has(ODS_PART) ? odsRows(parts) : xlsxRows(parts);
  } catch (error) {
    if (error instanceof BrokenPart) return undefined;
    throw error;
  }
}

/** Columns that are looked at; no table of books has as many. */
const MOST_COLUMNS = 256;

function tableRow({ row, cells }: SheetRow): TableRow {
  const last = Math.min(MOST_COLUMNS, Math.max(0, ...cells.keys()));
  return { row, line: row, cells: Array.from({ length: last }, (_, i) => (cells.get(i + 1) ?? "").trim()) };
}
