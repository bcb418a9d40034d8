import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, vi } from "vitest";
import { offeredOf } from "../../../../src/input/class/kit-named.ts";
import { readClass } from "../../../../src/input/class/read-classes.ts";
import { type CellChange, DeskClass, gridRows } from "../../../../src/page/desk/seats/desk-class.ts";
import { pastedCells } from "../../../../src/page/desk/seats/paste.ts";
import { shownColumns } from "../../../../src/page/desk/seats/seat-grid.ts";
import { FIXTURE_KITS, FIXTURES, fixtureKit } from "../../../input/kit/kit-folders.ts";

const kits = FIXTURE_KITS.map(fixtureKit);
const FOLDER = join(FIXTURES, "content/classes/winter-evenings");
const FILE = "content/classes/winter-evenings";
const index = readFileSync(join(FOLDER, "index.md"), "utf8");
const books = readFileSync(join(FOLDER, "books.csv"), "utf8");

const texts = (text: string, table?: string) => ({
  matter: { file: `${FILE}/index.md`, text, mark: "1" },
  table: table === undefined ? undefined : { file: `${FILE}/books.csv`, text: table, mark: "1" },
});

const opened = (text = index, table: string | undefined = books, changed = () => {}) =>
  new DeskClass(texts(text, table), { taken: undefined, kits }, changed);

/** A class whose seats stand in its front matter. */
const stated = (seats: string): DeskClass =>
  new DeskClass(texts(index.replace("books: books.csv", seats)), { taken: undefined, kits }, () => {});

const one = (row: CellChange["row"], column: string, text: string): CellChange => ({ row, column, text });

const cellsOf = (desk: DeskClass, column: string): (string | undefined)[] =>
  desk.grid.rows.map(({ cells }) => cells[column]);

const wrongIn = (desk: DeskClass): string[] =>
  desk.grid.rows.flatMap(({ number, wrong }) =>
    Object.entries(wrong).flatMap(([column, all]) => all.map(({ given }) => `${number} ${column}: ${given}`)),
  );

/** The lines of a text that another one has not. */
const freshLines = (was: string, is: string): string[] =>
  is.split("\n").filter((line) => !was.split("\n").includes(line));

describe("DeskClass.grid", () => {
  it("has the seats that the reader of classes reads", () => {
    const { plan } = readClass(FOLDER, FIXTURES, { ...offeredOf(kits), broken: [], drafts: [] });
    const { grid } = opened();
    expect(grid.rows.map(({ seat }) => seat)).toEqual(plan.seats);
    expect([grid.messages, grid.rows.map(({ number }) => number)]).toEqual([[], [1, 2, 3, 4, 5, 6, 7, 8]]);
    expect(shownColumns(grid, false)).toContain("height");
    expect(shownColumns(grid, false)).not.toContain("opening");
    expect(shownColumns(grid, true)).toContain("opening");
  });

  it("has seats of the front matter, of places, and of both", () => {
    const desk = stated(
      'places: 4\nseats:\n  - { seat: 3, kit: little-gull, book: { leafHeight: "8 1/4 in", leafWidth: 140, blockThickness: 14, leaves: 120, lastPage: 236 } }',
    );
    expect(cellsOf(desk, "leafHeight")).toEqual([undefined, undefined, "8 1/4 in", undefined]);
    expect(desk.grid.rows.map(({ seat }) => seat?.book.leafHeight)).toEqual([undefined, undefined, 209.55, undefined]);
  });

  it("tells what is wrong at its cell, and reads the other seats", () => {
    const desk = opened(index, books.replace("248,5,486", "many,5,486").replace("3,little-gull", "2,little-gull"));
    expect(wrongIn(desk)).toEqual(['2 leaves: given "many"', "2 seat: seat 2 stands here a second time"]);
    expect(desk.grid.rows.filter(({ seat }) => seat)).toHaveLength(6);
    const other = stated(
      "seats:\n  - { seat: 1, book: { leafHeight: 178 } }\n  - { seat: 2, pace: 99 }\n  - { seat: 3 }",
    );
    expect(wrongIn(other).map((text) => text.split(":")[0])).toEqual([
      "1 leafWidth",
      "1 blockThickness",
      "1 leaves",
      "2 pace",
    ]);
  });

  it("tells what is wrong beside the cells", () => {
    expect(opened(index, "seat,name\n1,x\n").grid.messages).toHaveLength(1);
    expect(opened("no front matter").grid.messages).toHaveLength(1);
  });
});

describe("DeskClass.set(changes)", () => {
  it("writes a cell of the table, and nothing else", () => {
    const changed = vi.fn();
    const desk = opened(index, books, changed);
    desk.set([one(1, "leaves", "250")]);
    expect(freshLines(books, desk.table!.text)).toEqual(["2,harbour-moon,222,148,31,250,5,486,,ltr,,,,"]);
    expect([desk.matter.isChanged, desk.grid.rows[1]!.seat!.book.leaves, changed.mock.calls.length]).toEqual([
      false,
      250,
      1,
    ]);
    desk.undo();
    expect([desk.table!.text, desk.canUndo, desk.canRedo]).toEqual([books, false, true]);
    desk.redo();
    expect(cellsOf(desk, "leaves")[1]).toBe("250");
  });

  it("makes many cells one thing to undo", () => {
    const desk = opened();
    desk.set([one(0, "leaves", "100"), one(1, "leaves", "260"), one({ newSeat: 9 }, "leafHeight", "210")]);
    expect(cellsOf(desk, "leaves").slice(0, 2)).toEqual(["100", "260"]);
    expect(desk.table!.text.split("\n").at(-2)).toBe("9,,210");
    desk.undo();
    expect(desk.table!.text).toBe(books);
  });

  it("puts a column behind the others where the table has none yet", () => {
    const desk = opened();
    desk.set([one(2, "opening", "100")]);
    expect(freshLines(books, desk.table!.text).map((line) => line.split(",").at(-1))).toEqual(["opening", "100"]);
    expect(desk.grid.rows[2]!.cells["opening"]).toBe("100");
  });

  it("writes into the front matter where a seat stands there", () => {
    const seats =
      "seats:\n  - { seat: 1, kit: little-gull, book: { leafHeight: 178, leafWidth: 110, blockThickness: 9.5, leaves: 96, lastPage: 186 } } # mine";
    const desk = stated(seats);
    desk.set([one(0, "leafHeight", "7 1/4 in"), one(0, "borderBefore", "6"), one(0, "direction", "RTL")]);
    expect(freshLines(index, desk.matter.text)).toEqual([
      "seats:",
      "  - { seat: 1, kit: little-gull, book: { leafHeight: 7 1/4 in, leafWidth: 110, blockThickness: 9.5, leaves: 96, lastPage: 186, direction: rtl }, fit: { borderLeaves: [6, 6] } } # mine",
    ]);
    expect(desk.grid.rows[0]!.seat!.refit).toMatchObject({
      leafHeight: 184.15,
      borderLeaves: [6, 6],
      direction: "rtl",
    });
    desk.set([one(0, "borderAfter", "")]);
    expect(desk.matter.text).not.toContain("borderLeaves");
  });

  it("takes out what is left empty", () => {
    const desk = stated("seats:\n  - seat: 1\n    pace: 1.2\n    fit: { height: 100 }\n  - seat: 2");
    desk.set([one(0, "height", "")]);
    expect(desk.matter.text).toContain("  - seat: 1\n    pace: 1.2\n  - seat: 2\n");
  });

  it("states a new seat where the class has its seats", () => {
    const desk = stated("places: 3");
    desk.set([one(1, "leafHeight", "210"), one(1, "kit", "Little Gull")]);
    expect(desk.matter.text).toContain("seats:\n  - { seat: 2, book: { leafHeight: 210 }, kit: little-gull }\n");
    const inTable = opened(index.replace("books: books.csv", "books: books.csv\nplaces: 9"));
    inTable.set([one(8, "leafHeight", "210")]);
    expect(inTable.table!.text.endsWith("\n9,,210\n")).toBe(true);
  });

  it("changes nothing where the text is the same", () => {
    const desk = opened();
    desk.set([one(0, "leaves", " 96 ")]);
    expect([desk.isChanged, desk.canUndo]).toEqual([false, false]);
  });

  it("holds two hundred seats", () => {
    const rows = Array.from({ length: 200 }, (_, i) => `${i + 1},little-gull,178,110,9.5,96,3,186`);
    const desk = opened(
      index,
      `seat,kit,leafHeight,leafWidth,blockThickness,leaves,pageOneLeaf,lastPage\n${rows.join("\n")}\n`,
    );
    desk.set([one(199, "leaves", "97")]);
    expect(desk.grid.rows[199]!.seat!.book.leaves).toBe(97);
  });
});

describe("DeskClass.meet(draft, found)", () => {
  it("takes another table, and asks where both were changed", () => {
    const desk = opened();
    const found = { file: desk.table!.file, text: books.replace("96,3,186", "98,3,186"), mark: "2" };
    desk.meet(desk.table!, found);
    expect(cellsOf(desk, "leaves")[0]).toBe("98");
    desk.set([one(1, "leaves", "250")]);
    desk.meet(desk.table!, { ...found, text: books, mark: "3" });
    expect([desk.table!.meeting!.canMerge, cellsOf(desk, "leaves").slice(0, 2)]).toEqual([false, ["98", "250"]]);
    desk.decide(desk.table!, "take");
    expect([cellsOf(desk, "leaves").slice(0, 2), desk.isChanged]).toEqual([["96", "248"], false]);
  });
});

describe("pastedCells(text, at, grid)", () => {
  const paste = (desk: DeskClass, text: string, row: number, column: string) => {
    const columns = shownColumns(desk.grid, false);
    const place = { row, column: columns.indexOf(column) };
    desk.set(pastedCells(text, place, { grid: desk.grid, columns, freeSeat: desk.freeSeat })!);
    return desk;
  };

  it("lays a rectangle on the grid", () => {
    const desk = paste(opened(), "210\t140\r\n211\t141\r\n", 6, "leafHeight");
    expect(desk.grid.rows.slice(6).map(({ cells }) => [cells["leafHeight"], cells["leafWidth"]])).toEqual([
      ["210", "140"],
      ["211", "141"],
    ]);
  });

  it("makes seats of rows beyond the last", () => {
    const desk = paste(opened(), "210\n211\n212", 7, "leafHeight");
    expect(cellsOf(desk, "seat").slice(7)).toEqual(["8", "9", "10"]);
    expect(cellsOf(desk, "leafHeight").slice(7)).toEqual(["210", "211", "212"]);
  });

  it("takes rows below a head to their seats, whatever the order of columns", () => {
    const desk = paste(opened(), "Leaves\tSeat\tLeaf height\n131\t3\t133\n90\t12\t\n", 0, "leaves");
    expect([cellsOf(desk, "leaves")[2], cellsOf(desk, "leafHeight")[2]]).toEqual(["131", "133"]);
    expect([desk.grid.rows.at(-1)!.number, cellsOf(desk, "leaves").at(-1)]).toEqual([12, "90"]);
  });

  it("takes quotes, commas, inches and empty cells", () => {
    const desk = paste(opened(), '"8 1/4 in","5,5"\n,140', 0, "leafHeight");
    expect(desk.grid.rows.slice(0, 2).map(({ cells }) => [cells["leafHeight"], cells["leafWidth"]])).toEqual([
      ["8 1/4 in", "5,5"],
      ["", "140"],
    ]);
    expect(desk.grid.rows[0]!.cells["leaves"]).toBe("96");
  });

  it("takes lines as a class’s page writes them", () => {
    const desk = paste(opened(), "9,little-gull,178,110,9.5,96,3,186,,ltr,", 0, "seat");
    expect(cellsOf(desk, "seat")).toContain("9");
  });

  it("is none where a text is no table", () => {
    const desk = opened();
    expect(
      pastedCells('"open', { row: 0, column: 0 }, { grid: desk.grid, columns: ["seat"], freeSeat: 9 }),
    ).toBeUndefined();
  });
});

describe("gridRows(grid)", () => {
  it("is a table of its own", () => {
    const rows = gridRows(opened().grid);
    expect(rows[0]!.slice(0, 3)).toEqual(["seat", "kit", "leafHeight"]);
    expect(rows).toHaveLength(9);
  });
});
