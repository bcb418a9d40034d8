import { costsOf } from "../../../core/class/costs.ts";
import type { FittingSeat } from "../../../core/class/fit-seats.ts";
import type { KitClass } from "../../../core/class/kit-class.ts";
import type { PooledSupply } from "../../../core/class/pooled-supply.ts";
import { money } from "../../../words/money.ts";
import { shoppingBuy, shoppingCount, shoppingName, shoppingNeed, shoppingNote } from "../../../words/shopping.ts";

/** A line of the shopping list as text. */
export interface ShoppingRow {
  readonly kind: PooledSupply["kind"];
  readonly name: string;
  readonly note: string;
  readonly need: string;
  readonly stock: string;
  readonly buy: string;
  /** Of what is still to buy; empty where that is nothing or no price is stated. */
  readonly price: string;
}

export interface CostsView {
  readonly seats: readonly SeatCost[];
  readonly used: string;
  readonly toPay: string;
}

/** What a seat uses, as money. */
export interface SeatCost {
  readonly seat: number;
  readonly kit: string;
  readonly amount: string;
}

export function shoppingRows(plan: KitClass, list: readonly PooledSupply[]): ShoppingRow[] {
  return list.map((line) => ({
    kind: line.kind,
    name: shoppingName(line),
    note: shoppingNote(line, plan.units),
    need: shoppingNeed(line),
    stock: shoppingCount(line.stock),
    buy: shoppingBuy(line),
    price: line.toPay === undefined || line.buy === 0 ? "" : money(line.toPay, plan.currency),
  }));
}

/** What the list costs; undefined where no price is stated. */
export function costsView(
  plan: KitClass,
  list: readonly PooledSupply[],
  fitting: readonly FittingSeat[],
): CostsView | undefined {
  const costs = costsOf(
    list,
    fitting.map(({ seat }) => seat.number),
  );
  return (
    costs && {
      seats: fitting.map(({ seat, kit }) => ({
        seat: seat.number,
        kit: kit.title,
        amount: money(costs.seats.get(seat.number)!, plan.currency),
      })),
      used: money(costs.used, plan.currency),
      toPay: money(costs.toPay, plan.currency),
    }
  );
}
