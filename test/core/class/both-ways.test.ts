import { describe, expect, it } from "vitest";
import { classLayouts, seatParts } from "../../../src/core/class/class-sheets.ts";
import { fitSeats, onKit } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { poolSupplies } from "../../../src/core/class/pool.ts";
import { scheduleOf } from "../../../src/core/class/schedule.ts";
import { spareEntry } from "../../../src/core/class/seat-line.ts";
import { awaitsNoKnife, isKnifeFree } from "../../../src/core/class/seat-way.ts";
import { tasksOf } from "../../../src/core/class/tasks.ts";
import { toolBlocks } from "../../../src/core/class/tool-blocks.ts";
import { fitAny } from "../../../src/core/pattern/fit-any.ts";
import { fromAddress, toAddress } from "../../../src/core/refit/address.ts";
import { refitKit } from "../../../src/core/refit/refit.ts";
import { cornerCsv } from "../../../src/output/data/pattern-csv.ts";
import { messagesOfClass, readMadeClass, smallClass } from "./made-class.ts";

const BOOK = { leafHeight: 178, leafWidth: 108, blockThickness: 12.5, leaves: 112, pageOneLeaf: 3 };
/** Three seats at the gull: one cuts, two fold by corners, one of those with half the pace. */
const SEATS = [
  { seat: 1, book: BOOK },
  { seat: 2, book: BOOK, fit: { foldStyle: "corner" } },
  { seat: 3, book: { ...BOOK, leafHeight: 190 }, fit: { foldStyle: "corner" }, pace: 2 },
];
const mixed = (changes: object = {}): KitClass => readMadeClass({ ...smallClass(), seats: SEATS, ...changes });
const PLAN = mixed();
const { fitting, misfits } = fitSeats(PLAN.seats, PLAN.kits, PLAN);
const parts = seatParts(fitting);
const list = poolSupplies(PLAN, fitting, classLayouts(parts, PLAN.sheets));
const need = (id: string) => list.find((line) => line.id === id)?.need;

describe("a class in which one seat cuts and others fold by corners", () => {
  it("fits each seat in its own way, as the kit's page does for the address of the seat", () => {
    expect(misfits).toEqual([]);
    expect(PLAN.seats.map(isKnifeFree)).toEqual([false, true, true]);
    for (const { seat, pattern } of fitting) {
      const { refit } = fromAddress(new URLSearchParams(toAddress(seat.refit)), seat.kit);
      const result = fitAny(refitKit(seat.kit, refit));
      expect(result.fits && result.pattern.leaves).toEqual(pattern.leaves);
    }
  });

  it("buys blades, knives and mats for seats that cut, and a book and a pencil for each", () => {
    expect([need("knife"), need("mat"), need("awl")]).toEqual([1, 1, 1]);
    expect([need("book"), need("pencil"), need("boneFolder")]).toEqual([3, 3, 3]);
    expect(list.find(({ id }) => id === "blades")!.shares.has(2)).toBe(false);
    expect(list.find(({ id }) => id === "card")!.shares.get(2)).toBeGreaterThan(0);
  });

  it("gives who folds a corner gauge and a folding card of her own, and who cuts a scoring gauge", () => {
    expect(parts.map(({ seat, kind }) => `${seat} ${kind}`)).toEqual([
      "1 scoring-gauge",
      "2 corner-gauge",
      "2 folding-card",
      "3 corner-gauge",
      "3 folding-card",
    ]);
    // The gauge's slant is 45°: as far in as it is down.
    const [[[x0, y0], , , [x1, y1]]] = parts[1]!.outlines as [[[number, number], unknown, unknown, [number, number]]];
    expect([x1, y1, x0 - y0]).toEqual([0, 0, 0]);
  });

  // Counted from the table that the seat is given: a leaf, each mark, each fold, each tenth leaf at the kit's rates.
  it("takes as long as the seat's own table says", () => {
    const folded = fitting[1]!;
    if (!folded.pattern.corner) throw new Error("seat 2 cuts");
    const { rates } = folded.kit;
    const rows = cornerCsv(folded.pattern).trim().split("\n").slice(1).length;
    const { marks, folds, checks } = folded.counts;
    const seconds = rows * rates.leaf + marks * rates.mark + folds * rates.fold + checks * rates.check;
    const tasks = tasksOf(PLAN, folded);
    expect(tasks.every(({ kind }) => kind === "leaf")).toBe(true);
    expect(tasks.reduce((sum, { minutes }) => sum + minutes, 0)).toBeCloseTo(seconds / 60, 6);
    expect(folded.effort.minutes).toBeCloseTo(seconds / 60, 6);
  });

  it("lets who folds wait for no knife", () => {
    const plan = mixed({ tools: { knife: 1 }, seats: [...SEATS, { seat: 4, book: BOOK }] });
    const seats = fitSeats(plan.seats, plan.kits, plan).fitting;
    const [one, two, three, four] = scheduleOf(plan, seats).map(({ waits }) => waits);
    expect(one! + four!).toBeGreaterThan(0);
    expect([two, three]).toEqual([0, 0]);
    const blocks = toolBlocks(plan, seats[1]!, tasksOf(plan, seats[1]!));
    expect(blocks.every(({ tools, holds }) => tools.length === 0 && holds === 0)).toBe(true);
  });

  it("saves nothing for who folds by what is ready before", () => {
    const [, folded] = scheduleOf(PLAN, fitting);
    expect(folded!.saves).toEqual({ scores: 0, parts: 0 });
    expect(folded!.windowAt).toBeUndefined();
  });
});

describe("a seat without a knife", () => {
  it("keeps its way with another kit and with a substitute book", () => {
    const [cuts, folds] = PLAN.seats;
    expect(onKit(cuts!, PLAN.kits[0]!).refit.foldStyle).toBeUndefined();
    expect(onKit(folds!, PLAN.kits[0]!).refit.foldStyle).toBe("corner");
    expect(spareEntry(folds!, BOOK as never, 1).text).toContain("fit: { foldStyle: corner }");
    expect(spareEntry({ ...folds!, bookIn: "table" }, BOOK as never, 1).text).toBe(
      "2,little-gull,178,108,12.5,112,3,,,,,corner",
    );
  });

  it("is tried without a knife where its book does not carry its kit", () => {
    const narrow = { ...BOOK, leafHeight: 60 };
    const plan = mixed({ seats: [{ seat: 2, book: narrow, fit: { foldStyle: "corner" } }] });
    const [misfit] = fitSeats(plan.seats, plan.kits, plan).misfits;
    expect(misfit!.offers.length).toBeGreaterThan(0);
    for (const { refit } of misfit!.offers) expect(refit.foldStyle).toBe("corner");
  });

  it("is stated in the table of books, too", () => {
    const table = `seat,leafHeight,leafWidth,blockThickness,leaves,foldStyle\n1,178,108,12.5,112,\n2,178,108,12.5,112,Corner\n`;
    const { seats } = readMadeClass({ ...smallClass(), seats: [], books: "books.csv" }, table);
    expect(seats.map(isKnifeFree)).toEqual([false, true]);
  });

  it("is known before its book comes", () => {
    const { awaiting } = mixed({ places: 3, seats: [{ seat: 2, fit: { foldStyle: "corner" } }] });
    expect(awaiting.map(awaitsNoKnife)).toEqual([false, true, false]);
  });

  it("is refused another word, with what is allowed", () => {
    const [message] = messagesOfClass({ ...smallClass(), seats: [{ ...SEATS[1], fit: { foldStyle: "corners" } }] });
    expect(message).toMatchObject({ field: "seats[1].fit.foldStyle" });
    expect(message!.allowed).toMatch(/single.*stepped.*corner/);
  });
});
