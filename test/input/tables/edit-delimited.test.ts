import { describe, expect, it } from "vitest";
import { readDelimited } from "../../../src/input/tables/delimited.ts";
import { type CellEdit, delimitedText, editDelimited } from "../../../src/input/tables/edit-delimited.ts";
import { fc } from "../../seed.ts";

const CASES: Readonly<Record<string, readonly [table: string, edit: CellEdit, wanted: string]>> = {
  "a cell": ["seat,leaves\n1,200\n2,210\n", { row: 2, column: 1, text: "204" }, "seat,leaves\n1,200\n2,204\n"],
  "an empty cell": ["a,b,c\n1,,3\n", { row: 1, column: 1, text: "2" }, "a,b,c\n1,2,3\n"],
  "a cell behind spaces": ["a; b ;c\r\n1;  2 ;3", { row: 1, column: 1, text: "9" }, "a; b ;c\r\n1;  9 ;3"],
  "a cell in quotes": ['a,b\n"1","2"\n', { row: 1, column: 1, text: "9" }, 'a,b\n"1","9"\n'],
  "a comma": ["a,b\n1,2\n", { row: 1, column: 1, text: "1,5" }, 'a,b\n1,"1,5"\n'],
  "a mark of inches": ["a\tb\n1\t2\n", { row: 1, column: 1, text: '8 1/4"' }, 'a\tb\n1\t"8 1/4"""\n'],
  "a cell below a stated separator": ["sep=;\na;b\n1;2\n", { row: 1, column: 0, text: "9" }, "sep=;\na;b\n9;2\n"],
  "a cell behind the end of its row": ["a,b,c\n1\n", { row: 1, column: 2, text: "3" }, "a,b,c\n1,,3\n"],
  "a cell below an empty row": ["a,b\n\n,\n1,2\n", { row: 1, column: 1, text: "9" }, "a,b\n\n,\n1,9\n"],
  "a cell behind one over two lines": [
    'a,b\n"x\ny",2\n3,4\n',
    { row: 2, column: 0, text: "9" },
    'a,b\n"x\ny",2\n9,4\n',
  ],
  "a new row": ["a,b\r\n1,2\r\n", { row: 2, column: 1, text: "9" }, "a,b\r\n1,2\r\n,9\r\n"],
  "a new row behind a last line without an end": ["a,b\n1,2", { row: 9, column: 0, text: "3" }, "a,b\n1,2\n3"],
  "a row of an empty table": ["", { row: 0, column: 1, text: "b" }, ",b\n"],
  nothing: ["a,b\n1,2\n", { row: 1, column: 1, text: "" }, "a,b\n1,\n"],
};

describe("editDelimited(file, text, edits)", () => {
  it.each(Object.entries(CASES))("writes %s", (_, [table, edit, wanted]) => {
    expect(editDelimited("books.csv", table, [edit])).toBe(wanted);
  });

  const cell = fc.constantFrom(
    "",
    "1",
    "8 1/4 in",
    '8 1/4"',
    "1,5",
    "192:4; 300:2",
    "a;b",
    "x\ty",
    "“ä”",
    "little-gull",
  );
  const separator = fc.constantFrom(",", ";", "\t");
  const eol = fc.constantFrom("\n", "\r\n");

  it("is read with that cell, and with all others as they were", () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 1, maxLength: 5 }),
        fc.record({ row: fc.integer({ min: 1, max: 6 }), column: fc.nat(4), text: cell }),
        separator,
        eol,
        (body, edit, sign, end) => {
          const quote = (one: string): string => (/[,;\t"]/.test(one) ? `"${one.replaceAll('"', '""')}"` : one);
          const rows = [["seat", "kit", "leaves"], ...body].map((row, i) => [
            i === 0 ? row[0]! : String(i),
            ...row.slice(1),
          ]);
          const text = rows.map((row) => row.map(quote).join(sign) + end).join("");
          const edited = readDelimited("x", editDelimited("x", text, [edit])).map(({ cells }) => cells);
          const place = Math.min(edit.row, rows.length);
          const wanted = rows.with(Math.min(place, rows.length - 1), rows[Math.min(place, rows.length - 1)]!);
          if (place === rows.length) wanted.push([]);
          const filled = Array.from({ length: Math.max(3, edit.column + 1) }, (_, i) => wanted[place]![i] ?? "");
          wanted[place] = filled.with(edit.column, edit.text);
          const bare = (all: readonly (readonly string[])[]) =>
            all.map((row) => row.join("|").replace(/\|+$/, "")).filter((row) => row !== "");
          expect(bare(edited)).toEqual(bare(wanted));
        },
      ),
      { numRuns: 400 },
    );
  });

  it("changes no other line", () => {
    const text = 'seat , leaves\r\n"1",  200 \r\n2,"2""10"\r\n3,220\r\n';
    expect(editDelimited("x", text, [{ row: 3, column: 1, text: "221" }])).toBe(text.replace("220", "221"));
  });
});

describe("delimitedText(rows)", () => {
  it("is read back", () => {
    const rows = [
      ["seat", "leafHeight"],
      ["1", '8 1/4"'],
      ["2", "1,5"],
    ];
    expect(readDelimited("x", delimitedText(rows)).map(({ cells }) => cells)).toEqual(rows);
  });
});
