import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { readTable } from "../../../src/input/tables/read-table.ts";
import { cellName } from "../../../src/input/tables/table-row.ts";
import { FIXTURES } from "../kit/kit-folders.ts";

function read(bytes: Uint8Array, file = "books.xlsx") {
  const base = mkdtempSync(join(tmpdir(), "leaflight-table-"));
  try {
    writeFileSync(join(base, file), bytes);
    return readTable({ base, file, kind: "table" });
  } finally {
    rmSync(base, { recursive: true, force: true });
  }
}

const fixture = (name: string) => read(readFileSync(join(FIXTURES, "tables", name)), name);
const texts = (rows: ReturnType<typeof read>) => rows.map(({ cells }) => cells);

/** A workbook by hand; its sheet's rows as XML. Source: ECMA-376, part 1. */
function workbook(rows: string, more: Record<string, string> = {}): Uint8Array {
  const parts: Record<string, string> = {
    "xl/workbook.xml":
      '<workbook xmlns:r="urn:r"><sheets><sheet name="Second made" r:id="rId7"/><sheet name="x" r:id="rId1"/></sheets></workbook>',
    "xl/_rels/workbook.xml.rels":
      '<Relationships><Relationship Id="rId1" Target="worksheets/sheet1.xml"/><Relationship Id="rId7" Target="worksheets/sheet2.xml"/></Relationships>',
    "xl/worksheets/sheet1.xml": "<worksheet><sheetData><row><c><v>99</v></c></row></sheetData></worksheet>",
    "xl/worksheets/sheet2.xml": `<worksheet><sheetData>${rows}</sheetData></worksheet>`,
    ...more,
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([path, text]) => [path, strToU8(text)])));
}

/** An OpenDocument spreadsheet by hand. Source: OASIS OpenDocument 1.3, part 3. */
function spreadsheet(rows: string): Uint8Array {
  const open = '<o:document-content xmlns:o="urn:o" xmlns:table="urn:t" xmlns:text="urn:x"><o:body><o:spreadsheet>';
  const text = `${open}<table:table>${rows}</table:table></o:spreadsheet></o:body></o:document-content>`;
  return zipSync({ mimetype: strToU8("application/vnd.oasis.opendocument.spreadsheet"), "content.xml": strToU8(text) });
}

describe("readTable(source)", () => {
  // Written by SheetJS CE 0.20.3, which has nothing to do with the reader.
  it.each(["books.xlsx", "books.ods"])("reads the first sheet of %s as it was typed", (name) => {
    const rows = fixture(name);
    expect(rows.map(({ row }) => row)).toEqual([1, 2, 4, 5]);
    expect(rows[1]!.cells).toEqual(["1", "Little Gull", "178", "108.5", '0.55"', "112", "3", "218", "", "LTR"]);
    expect(rows[2]!.cells.slice(0, 8)).toEqual(["2", "harbour-moon", '8 1/2"', "148 mm", "31", "248", "5", "486"]);
    expect(rows[3]!.cells[8]).toBe("96:2; 120:4");
  });

  // Written by write-excel-file 4.1.1.
  it("reads a workbook of another program", () => {
    expect(texts(fixture("plain.xlsx"))[1]!.slice(0, 4)).toEqual(["3", "little-gull", "182.25", "115"]);
  });

  it("takes the sheet that stands first, texts in runs, in place and by their number, and numbers as they were typed", () => {
    const shared =
      '<sst><si><t>one</t></si><si><r><t>leaf</t></r><r><t xml:space="preserve"> two</t></r><rPh><t>no</t></rPh></si></sst>';
    const rows = `<row r="3"><c r="B3" t="s"><v>1</v></c><c t="inlineStr"><is><t>here</t></is></c><c r="AA3"><v>9.4999999999999996</v></c></row>`;
    const [row] = read(workbook(rows, { "xl/sharedStrings.xml": shared }));
    expect([row!.row, row!.cells[1], row!.cells[2], row!.cells[26]]).toEqual([3, "leaf two", "here", "9.5"]);
    expect(row!.cells).toHaveLength(27);
  });

  it("passes over what fills an OpenDocument sheet up, and over notes at cells", () => {
    const cell = (text: string, attributes = "") =>
      `<table:table-cell ${attributes}><text:p>${text}</text:p></table:table-cell>`;
    const rows = `<table:table-header-rows><table:table-row>${cell("a<text:s/>b")}${cell("c")}<table:table-cell table:number-columns-repeated="16382"/></table:table-row></table:table-header-rows>
      <table:table-row table:number-rows-repeated="4"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>
      <table:table-row>${cell("<o:annotation><text:p>note</text:p></o:annotation>2,50", 'o:value-type="float" o:value="2.5"')}${cell("x", 'table:number-columns-repeated="2"')}</table:table-row>
      <table:table-row table:number-rows-repeated="1048570"><table:table-cell/></table:table-row>`;
    expect(read(spreadsheet(rows), "b.ods").map(({ row, cells }) => [row, cells])).toEqual([
      [1, ["a b", "c"]],
      [6, ["2.5", "x", "x"]],
    ]);
  });

  it.each([
    ["an archive without a table", zipSync({ "a.txt": strToU8("a") })],
    ["half a workbook", workbook("<row/>").slice(0, 300)],
    ["XML that does not end", workbook("<row>")],
    ["a document type", workbook("", { "xl/worksheets/sheet2.xml": "<!DOCTYPE w [<!ENTITY a 'b'>]><w>&a;</w>" })],
    ["more than may be unpacked", workbook("", { "xl/sharedStrings.xml": `<sst>${" ".repeat(40_000_000)}</sst>` })],
    ["nesting without an end", workbook("<row>".repeat(5000) + "</row>".repeat(5000))],
  ])("says of %s what can be read", (_, bytes) => {
    expect(() => read(bytes)).toThrow(/books\.xlsx {2}books table: no table that can be read/);
  });
});

describe("cellName(column, row)", () => {
  // As spreadsheets name them.
  it.each([
    [1, 1, "A1"],
    [26, 4, "Z4"],
    [27, 4, "AA4"],
    [702, 9, "ZZ9"],
    [703, 9, "AAA9"],
  ])("names column %d of row %d %s", (column, row, name) => {
    expect(cellName(column, row)).toBe(name);
  });
});
