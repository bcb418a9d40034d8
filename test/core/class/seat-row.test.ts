import { describe, expect, it } from "vitest";
import { leafNumber } from "../../../src/core/book/leaf-number.ts";
import { ROW_COLUMNS, seatRow } from "../../../src/core/class/seat-row.ts";
import { readMadeClass, smallClass } from "./made-class.ts";

const BOOK = { leafHeight: 190.5, leafWidth: 108, blockThickness: 12.5, leaves: 112 };
const PLATES = [
  { afterPage: 96, leaves: 2 },
  { afterPage: 120, leaves: 4 },
];

describe("seatRow(seat, kit, book)", () => {
  it("is a line of a table, whose cells need no quotes", () => {
    expect(ROW_COLUMNS.join(",")).toBe(
      "seat,kit,leafHeight,leafWidth,blockThickness,leaves,pageOneLeaf,lastPage,plates,direction,pace,foldStyle",
    );
    expect(seatRow({ seat: 4, kit: "little-gull" }, BOOK)).toBe("4,little-gull,190.5,108,12.5,112,,,,,,");
    const whole = { ...BOOK, pageOneLeaf: leafNumber(3), lastPage: 218, plates: PLATES, direction: "rtl" } as const;
    expect(seatRow({ seat: 4, kit: "little-gull", pace: 1.5 }, whole)).toBe(
      "4,little-gull,190.5,108,12.5,112,3,218,96x2.120x4,rtl,1.5,",
    );
    expect(seatRow({ seat: 4, kit: "little-gull", foldStyle: "corner" }, BOOK)).toMatch(/,,corner$/);
  });

  it("is read back as the same book", () => {
    const book = { ...BOOK, pageOneLeaf: leafNumber(3), lastPage: 218, plates: PLATES, direction: "rtl" } as const;
    const table = `${ROW_COLUMNS.join(",")}\n${seatRow({ seat: 4, kit: "little-gull" }, book)}\n`;
    const [seat] = readMadeClass({ ...smallClass(), seats: [], books: "books.csv" }, table).seats;
    expect(seat).toMatchObject({ number: 4, book });
  });
});
