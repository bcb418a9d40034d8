import { costsOf } from "../../../core/class/costs.ts";
import type { KitClass } from "../../../core/class/kit-class.ts";
import type { PooledSupply } from "../../../core/class/pooled-supply.ts";
import { money } from "../../../words/money.ts";
import { shoppingCount, shoppingName, shoppingNeed, shoppingNote } from "../../../words/shopping.ts";

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
  /** By the seats' numbers. */
  readonly seats: ReadonlyMap<number, string>;
  readonly used: string;
  readonly toPay: string;
}

export function shoppingRows(plan: KitClass, list: readonly PooledSupply[]): ShoppingRow[] {
  return list.map((line) => ({
    kind: line.kind,
    name: shoppingName(line),
    note: shoppingNote(line, plan.units),
    need: shoppingNeed(line),
    stock: shoppingCount(line.stock),
    buy: shoppingCount(line.buy),
    price: line.toPay === undefined || line.buy === 0 ? "" : money(line.toPay, plan.currency),
  }));
}

/** What the list costs; undefined where no price is stated. */
export function costsView(
  plan: KitClass,
  list: readonly PooledSupply[],
  seats: readonly number[],
): CostsView | undefined {
  const costs = costsOf(list, seats);
  return (
    costs && {
      seats: new Map([...costs.seats].map(([seat, amount]) => [seat, money(amount, plan.currency)])),
      used: money(costs.used, plan.currency),
      toPay: money(costs.toPay, plan.currency),
    }
  );
}
