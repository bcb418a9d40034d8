import { toBuy } from "../supplies/lengths.ts";
import { tidy } from "../units/length.ts";
import type { KitClass, Stock } from "./kit-class.ts";
import type { NeededSupply, PooledSupply } from "./pooled-supply.ts";

/** Stock is taken off the lines that it is for, one after the other; what is sold in packs is bought in whole ones. */
export function takeFromStock(
  lines: readonly NeededSupply[],
  { stock, packs }: Pick<KitClass, "stock" | "packs">,
): PooledSupply[] {
  const left = stock.map((one) => ({ ...one }));
  return lines.map((line) => {
    let buy = line.need;
    for (const one of left.filter((other) => isOfLine(other, line))) {
      const taken = Math.min(one.quantity, buy);
      one.quantity -= taken;
      buy -= taken;
    }
    const rest = toBuy(buy, line.unit);
    const pack = line.id !== undefined && line.id in packs ? packs[line.id as keyof KitClass["packs"]] : undefined;
    const packed = pack && { size: pack, count: Math.ceil(tidy(rest / pack)) };
    const bought = packed ? packed.count * packed.size : rest;
    return {
      ...line,
      stock: tidy(line.need - rest),
      buy: rest,
      packs: packed && packed.count > 0 ? packed : undefined,
      toPay: line.worth === undefined ? undefined : tidy((line.worth * bought) / line.need, 2),
    };
  });
}

/** Stock that no line of the list has a use for. */
export function unusedStock(plan: KitClass, list: readonly PooledSupply[]): Stock[] {
  return plan.stock.filter((one) => !list.some((line) => isOfLine(one, line)));
}

/** What the program counts is told by its id, another thing by the name that kit and class give it. */
function isOfLine(stock: Stock, { id, own }: Pick<PooledSupply, "id" | "own">): boolean {
  return stock.id === undefined ? nameOf(stock) === nameOf(own) : stock.id === id;
}

/** An own thing's name, whatever its capitals. */
export function nameOf(thing: { readonly item: string } | undefined): string | undefined {
  return thing?.item.trim().toLowerCase();
}
