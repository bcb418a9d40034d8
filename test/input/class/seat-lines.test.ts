import { describe, expect, it } from "vitest";
import { seatRow } from "../../../src/core/class/seat-row.ts";
import { tableSeats } from "../../../src/input/class/table-seats.ts";
import { readDelimited } from "../../../src/input/tables/delimited.ts";
import { KITS } from "../../core/class/made-class.ts";
import { fc } from "../../seed.ts";

/** A length to the hundredth of a millimetre. */
const length = (least: number, most: number) =>
  fc.integer({ min: least * 100, max: most * 100 }).map((hundredths) => hundredths / 100);
const BOOK = fc.record({
  leafHeight: length(40, 600),
  leafWidth: length(30, 500),
  blockThickness: length(1, 200),
  leaves: fc.integer({ min: 4, max: 3000 }),
  pageOneLeaf: fc.integer({ min: 1, max: 3000 }),
  lastPage: fc.integer({ min: 1, max: 10_000 }),
  plates: fc.array(
    fc.record({ afterPage: fc.integer({ min: 1, max: 10_000 }), leaves: fc.integer({ min: 1, max: 500 }) }),
    { minLength: 1, maxLength: 4 },
  ),
  direction: fc.constantFrom("ltr", "rtl"),
});
const SEAT = fc.record({
  book: BOOK,
  kit: fc.constantFrom(...KITS.map(({ slug }) => slug)),
  pace: fc.constantFrom(undefined, 0.8, 1, 1.5, 2),
});

/** How a teacher may have the lines: as they are, each in one cell, or below a head row of her own. */
const KEPT: Readonly<Record<string, (lines: readonly string[]) => string>> = {
  "as they are": (lines) => lines.join("\n"),
  "each in one cell": (lines) => lines.map((line) => `"${line}"`).join("\n"),
  "below a head row, in a table with semicolons": (lines) => ["Leaves;Seat", ...lines].join("\n"),
};

describe("lines of a class's page", () => {
  it.each(Object.keys(KEPT))("are read back as they were written, %s", (way) => {
    fc.assert(
      fc.property(fc.array(SEAT, { minLength: 1, maxLength: 5 }), (seats) => {
        const lines = seats.map(({ book, kit, pace }, i) => seatRow({ seat: i + 1, kit, pace }, book as never));
        const read = tableSeats("books.csv", readDelimited("books.csv", `${KEPT[way]!(lines)}\n`), KITS);
        expect(read.size).toBe(seats.length);
        for (const [i, { book, kit, pace }] of seats.entries())
          expect(read.get(i + 1)).toEqual({ seat: i + 1, kit, book, ...(pace === undefined ? {} : { pace }) });
      }),
    );
  });
});
