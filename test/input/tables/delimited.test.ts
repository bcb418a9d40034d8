import { describe, expect, it } from "vitest";
import { KitError } from "../../../src/input/files/message.ts";
import { readDelimited } from "../../../src/input/tables/delimited.ts";

const cells = (text: string) => readDelimited("books.csv", text).map((row) => row.cells);

describe("readDelimited(file, text)", () => {
  it.each([
    ["commas", "a,b\n1,2\n"],
    ["semicolons", "a;b\n1;2\n"],
    ["tabs", "a\tb\n1\t2\n"],
    ["a stated semicolon", "sep=;\na;b\n1;2\n"],
    ["a stated semicolon in quotes and capitals", '"SEP=;"\r\na;b\r\n1;2\r\n'],
    ["a stated comma, though a head has a semicolon", 'sep=,\n"a",b\n1,2\n'],
    ["a stated tab", "sep=\t\na\tb\n1\t2\n"],
    ["spaces around cells", " a , b \n 1 ,2\n"],
  ])("parts cells by %s", (_, text) => {
    expect(cells(text)).toEqual([
      ["a", "b"],
      ["1", "2"],
    ]);
  });

  it("keeps marks of inches, in quotes as RFC 4180 has them and as people type them", () => {
    expect(cells('a,b\n"8 1/4""",8 1/4"\n')[1]).toEqual(['8 1/4"', '8 1/4"']);
    expect(cells('a;b\n8,25";5½″\n')[1]).toEqual(['8,25"', "5½″"]);
  });

  it("numbers rows as spreadsheets do, and lines as editors do", () => {
    const rows = readDelimited("books.csv", 'sep=;\na;b\n\n"1\n2";3\n4;5\n');
    expect(rows.map(({ row, line }) => [row, line])).toEqual([
      [1, 2],
      [3, 5],
      [4, 6],
    ]);
  });

  it("tells of a quote that does not end, with its line", () => {
    const read = () => readDelimited("books.csv", 'sep=;\na;b\n"1;2\n');
    expect(read).toThrow(KitError);
    expect(read).toThrow(/^books\.csv:3/);
  });
});
