import type { SeatPart } from "../../../src/core/class/class-sheets.ts";
import type { FittingSeat } from "../../../src/core/class/fit-seats.ts";
import type { KitClass } from "../../../src/core/class/kit-class.ts";
import { poolSupplies } from "../../../src/core/class/pool.ts";
import type { PooledSupply } from "../../../src/core/class/pooled-supply.ts";
import type { OwnSupply } from "../../../src/core/kit/kit.ts";
import type { SheetLayout } from "../../../src/core/packing/lay-out.ts";
import { madePattern, madeWindow } from "../plan/made-pattern.ts";
import { madeClass, madeSeat } from "./made-seats.ts";

const windowed = (number: number, frameLength: number, stringLength: number): FittingSeat =>
  madeSeat(number, {
    pattern: madePattern({ window: madeWindow({ frameLength, stringLength }) }),
    counts: { parts: 9, tacks: 2, cuts: 100 },
  });

/** Seat 1 has neither window nor tacks, 2 and 3 have a window. */
export const SEATS = [madeSeat(1, { counts: { cuts: 251 } }), windowed(2, 400, 120), windowed(3, 410, 130)];

/** The made class’s list. */
export const poolOf = (plan: Partial<KitClass> = {}, seats = SEATS, layouts: readonly SheetLayout<SeatPart>[] = []) =>
  poolSupplies(madeClass(plan), seats, layouts);
/** The lines of an id. */
export const lines = (list: readonly PooledSupply[], id: PooledSupply["id"]) => list.filter((one) => one.id === id);
/** The one line of an id. @throws Error where there is none, or more */
export const line = (list: readonly PooledSupply[], id: PooledSupply["id"]): PooledSupply => {
  const found = lines(list, id);
  if (found.length !== 1) throw new Error(`${found.length} lines ${id}`);
  return found[0]!;
};
/** What each seat has of a line. */
export const shares = (one: PooledSupply) => [...one.shares];

/** A seat whose kit has supplies of its own. */
export function withOwn(seat: FittingSeat, ...supplies: readonly OwnSupply[]): FittingSeat {
  return { ...seat, kit: { ...seat.kit, supplies } };
}
