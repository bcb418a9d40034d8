import type { PooledSupply } from "./pooled-supply.ts";

/** What a class costs, in the class's currency to 0.01; undefined where no price is stated. */
export interface ClassCosts {
  /** What each seat uses, by its number; together `used`. */
  readonly seats: ReadonlyMap<number, number>;
  /** What all seats use, stock included. */
  readonly used: number;
  /** What is still to be bought. */
  readonly toPay: number;
}

/**
 * Each priced line is split over the seats by their shares of it: sheets by area, lengths by length, the rest by count.
 * Cents are rounded so that the seats add up to the total (largest remainders).
 */
export function costsOf(list: readonly PooledSupply[], seats: readonly number[]): ClassCosts | undefined {
  const priced = list.filter((line) => line.worth !== undefined);
  if (priced.length === 0) return undefined;
  const exact = seats.map((seat) => priced.reduce((sum, line) => sum + shareOf(line, seat), 0));
  const used = cents(priced.reduce((sum, line) => sum + line.worth!, 0));
  return {
    seats: new Map(roundTogether(exact, used).map((value, i) => [seats[i]!, value / 100])),
    used: used / 100,
    toPay: cents(priced.reduce((sum, line) => sum + line.toPay!, 0)) / 100,
  };
}

function shareOf(line: PooledSupply, seat: number): number {
  const all = [...line.shares.values()].reduce((a, b) => a + b, 0);
  return (line.worth! * (line.shares.get(seat) ?? 0)) / all;
}

function cents(amount: number): number {
  return Math.round(amount * 100);
}

/** Whole cents that add up to a total; of equal rests the first is rounded up. */
function roundTogether(amounts: readonly number[], total: number): number[] {
  const floors = amounts.map((amount) => Math.floor(amount * 100 + 1e-7));
  const missing = total - floors.reduce((a, b) => a + b, 0);
  const order = amounts
    .map((amount, i) => ({ i, rest: amount * 100 - floors[i]! }))
    .toSorted((a, b) => b.rest - a.rest);
  for (const { i } of order.slice(0, Math.max(0, missing))) floors[i]! += 1;
  return floors;
}
