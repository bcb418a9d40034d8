import { classLayouts, seatParts } from "../../../src/core/class/class-sheets.ts";
import { fitSeats } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { type NamedSheet, namedSheets } from "../../../src/core/class/preparation.ts";
import { once } from "../../../src/core/lazily.ts";
import { cutSheetFigure } from "../../../src/output/drawing/class/cut-sheet.ts";
import { printedRuler } from "../../../src/output/drawing/class/ruler.ts";
import { seatCode } from "../../../src/output/drawing/class/seat-code.ts";
import { SHEET } from "../../../src/output/drawing/sheets/true-scale.ts";
import { readFixtureClass, readMadeClass, smallClass } from "../../core/class/made-class.ts";
import { CUT_SHEET, figureIn, onSheet, type Scene, SEAT_CODE } from "../scene.ts";

const sheetsOf = ({ seats, kits, units, sheets }: KitClass): NamedSheet[] =>
  namedSheets(classLayouts(seatParts(fitSeats(seats, kits, { units }).fitting), sheets));

const evenings = once(() => sheetsOf(readFixtureClass()));
const oneSeat = once(() => sheetsOf(readMadeClass(smallClass())));

const ADDRESSES = [
  ["short", "https://folds.example.org/seats/3"],
  ["long", `https://folds.example.org/quay/classes/winter-evenings/?${"height=216&width=140&".repeat(6)}`],
] as const;

/** What a class is given. */
export const classRoom: readonly Scene[] = [
  ...[1, 2, 3, 4, 5].map((number) => cutSheet("evenings", evenings, number)),
  cutSheet("one-seat", oneSeat, 1),
  ...ADDRESSES.map(
    ([name, address]): Scene => ({
      room: "class",
      name: `seat-code-${name}`,
      of: seatCode,
      draw: () => figureIn(SEAT_CODE, seatCode(address, "Code for a seat")),
    }),
  ),
  {
    room: "class",
    name: "ruler",
    of: printedRuler,
    draw: () => onSheet(printedRuler(SHEET.width), { width: SHEET.width, height: 16 }),
  },
];

function cutSheet(name: string, sheets: () => readonly NamedSheet[], number: number): Scene {
  return {
    room: "class",
    name: `cut-sheet-${name}-${number}`,
    of: cutSheetFigure,
    draw: () => {
      const sheet = sheets()[number - 1];
      if (!sheet) throw new Error(`There are ${sheets().length} sheets, none has the number ${number}.`);
      return figureIn(CUT_SHEET, cutSheetFigure(sheet));
    },
  };
}
