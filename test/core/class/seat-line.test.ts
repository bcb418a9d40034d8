import { describe, expect, it } from "vitest";
import { stringify } from "yaml";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { changeEntry, type SeatEntry, spareEntry } from "../../../src/core/class/seat-line.ts";
import { ROW_COLUMNS } from "../../../src/core/class/seat-row.ts";
import { helpsOf, misfitView } from "../../../src/output/views/class/misfit-view.ts";
import { readMadeClass, smallClass } from "./made-class.ts";

const SMALL = { leafHeight: 105, leafWidth: 72, blockThickness: 16, leaves: 160, pageOneLeaf: 2, lastPage: 316 };
const CARRIES = { leafHeight: 222, leafWidth: 148, blockThickness: 31, leaves: 248, pageOneLeaf: 5, lastPage: 486 };
const MATTER = {
  ...{ ...smallClass(), kits: ["harbour-moon", "little-gull", "evening-boat"], pace: 1.2 },
  spares: [{ label: "blue spine", book: CARRIES }],
};
const HEAD = ROW_COLUMNS.join(",");

/** A class with one seat, its book in the table or in the front matter, and a line entered for it. */
const inTable = (
  entry?: SeatEntry,
  book: Readonly<Record<string, unknown>> = SMALL,
  kit = "harbour-moon",
): KitClass => {
  const cells = { seat: 6, kit, ...book } as Readonly<Record<string, unknown>>;
  const row = ROW_COLUMNS.map((column) => cells[column] ?? "").join(",");
  const yaml = stringify({ ...MATTER, seats: undefined, books: "books.csv" });
  const line = entry?.into === "matter" ? `seats:\n  ${entry.text}\n` : "";
  return readMadeClass(yaml + line, `${HEAD}\n${entry?.into === "table" ? entry.text : row}\n`);
};
const inMatter = (entry?: SeatEntry, book: object = SMALL, kit = "harbour-moon"): KitClass => {
  const seats = entry ? `seats:\n  ${entry.text}\n` : stringify({ seats: [{ seat: 6, kit, book, pace: 0.8 }] });
  return readMadeClass(stringify({ ...MATTER, seats: undefined }) + seats);
};

/** What is offered to a seat that does not fit. */
const helpsIn = (plan: KitClass) => {
  const { misfits } = fitSeats(plan.seats, plan.kits, plan);
  expect(misfits).toHaveLength(1);
  return helpsOf(misfitView(misfits[0]!, plan));
};

describe("what a teacher enters", () => {
  it.each([
    ["its book in the table", inTable],
    ["its book in the front matter", inMatter],
  ])("for a seat with %s makes it fit, for each way that is told", (_, classWith) => {
    const helps = helpsIn(classWith());
    expect(helps.length).toBeGreaterThan(1);
    for (const { entry, words } of helps) {
      const plan = classWith(entry!);
      const { fitting } = fitSeats(plan.seats, plan.kits, plan);
      expect(
        fitting.map(({ seat }) => seat.number),
        words,
      ).toEqual([6]);
      expect(fitting[0]!.seat.pace).toBe(classWith().seats[0]!.pace);
    }
  });

  it.each([
    // Books by hand that are too low, too narrow, too thin in leaves, and one for each kit.
    ["little-gull", { ...SMALL, leafHeight: 90 }],
    ["little-gull", { ...SMALL, leaves: 30, lastPage: 56, blockThickness: 3 }],
    ["harbour-moon", { ...SMALL, leafHeight: 200, leafWidth: 66 }],
    ["evening-boat", { ...SMALL, leafHeight: 80, leafWidth: 90 }],
  ])("for %s in %o makes the seat fit", (kit, book) => {
    for (const { entry, words } of helpsIn(inTable(undefined, book, kit))) {
      if (!entry) continue;
      const plan = inTable(entry, book, kit);
      expect(fitSeats(plan.seats, plan.kits, plan).misfits, `${words} ${entry.text}`).toEqual([]);
    }
  });

  it("is the row of a substitute book for the table, and says hours and free paper of a change as the kit's page does", () => {
    const [spare] = helpsIn(inTable()).filter(({ words }) => words.includes("blue spine"));
    expect(spare!.entry).toEqual({ into: "table", text: "6,harbour-moon,222,148,31,248,5,486,,ltr,," });
    const [change] = helpsIn(inTable()).filter(({ entry }) => entry?.into === "matter");
    expect(change!.facts).toMatch(/^About .* free at the head and .* at the tail\.$/);
  });

  it("is one line that says only what changes, all of it", () => {
    const [seat] = inTable().seats;
    const refit = { ...seat!.refit, units: "in", height: 80.5, borderLeaves: [4, 6], lightDiameter: 30 } as const;
    expect(changeEntry(seat!, { kit: "harbour-moon", refit }, 1.2).text).toBe(
      "- { seat: 6, kit: harbour-moon, fit: { height: 80.5, borderLeaves: [4, 6] }, light: { diameter: 30 } }",
    );
    const own = inMatter().seats[0]!;
    expect(changeEntry({ ...own, refit: { height: 90 } }, { kit: "little-gull", refit: {} }, 1.2).text).toBe(
      "- { seat: 6, kit: little-gull, book: { leafHeight: 105, leafWidth: 72, blockThickness: 16, leaves: 160, pageOneLeaf: 2, lastPage: 316, direction: ltr }, fit: {}, pace: 0.8 }",
    );
    expect(spareEntry(own, CARRIES as never, 1.2).into).toBe("matter");
  });
});
