import type { PooledSupply } from "../core/class/pooled-supply.ts";
import type { UnitSystem } from "../core/units/length.ts";
import * as say from "./messages.ts";
import { decimal } from "./numbers.ts";
import { seatPartsText } from "./seats.ts";
import { cardSheetsText, supplyName, supplyNote, supplyUnit } from "./supplies.ts";

/** What a line of a class's shopping list is called, in the number of what is needed. */
export function shoppingName({ id, own, need }: PooledSupply): string {
  return id === "paper" ? say.supplyPaper() : supplyName({ id, own, quantity: need });
}

/** How much of it all seats need: `28`, `4 A4 sheets`, `1.9 m`. */
export function shoppingNeed({ need, unit, own, sheet }: PooledSupply): string {
  if (sheet !== undefined) return say.shoppingSheets({ count: need, sheet });
  const amount = decimal(String(need));
  if (unit === "each") return amount;
  return say.shoppingAmount({ amount, unit: supplyUnit({ unit, own, quantity: need }) });
}

/** What is to be bought: whole packs where it is sold in them. */
export function shoppingBuy({ buy, packs }: Pick<PooledSupply, "buy" | "packs">): string {
  return packs ? say.shoppingPacks(packs) : shoppingCount(buy);
}

/** A quantity by itself; a dash for none. */
export function shoppingCount(count: number): string {
  return count === 0 ? "–" : decimal(String(count));
}

/** Which it is, and for how many seats. */
export function shoppingNote({ id, reason }: PooledSupply, units: UnitSystem): string {
  if (reason.kind === "packed") {
    const { tooLarge, colours } = reason;
    const packed =
      tooLarge.length === 0 ? say.shoppingPacked() : say.shoppingTooSmall({ parts: seatPartsText(tooLarge) });
    return colours ? say.shoppingColours({ packed, colours: cardSheetsText(colours) }) : packed;
  }
  const { seats, of } = reason;
  switch (of?.kind) {
    case "book":
      return say.shoppingBooks();
    case "light":
    case "tool":
    case "card-scissors": {
      const why = supplyNote({ id: id === "paper" ? undefined : id, reason: of }, units);
      return why === "" ? say.shoppingSeats({ seats }) : say.shoppingWhy({ why, seats });
    }
    default:
      return say.shoppingSeats({ seats });
  }
}
