import type { SheetLayout } from "../packing/lay-out.ts";
import { extentOf } from "../packing/pack.ts";
import { suppliesOfAny } from "../supplies/any-supplies.ts";
import { cardSheets } from "../supplies/card-sheets.ts";
import { isLength, toBuy } from "../supplies/lengths.ts";
import type { Supply } from "../supplies/supply.ts";
import { tidy } from "../units/length.ts";
import { type SeatPart, seatsOfPart } from "./class-sheets.ts";
import type { FittingSeat } from "./fit-seats.ts";
import type { KitClass } from "./kit-class.ts";
import type { NeededSupply, PooledSupply } from "./pooled-supply.ts";
import { nameOf, takeFromStock } from "./stock.ts";

/** The shopping list of all fitting seats: sheets as they are packed over the class, lengths added before they are rounded. */
export function poolSupplies(
  plan: KitClass,
  seats: readonly FittingSeat[],
  layouts: readonly SheetLayout<SeatPart>[],
): PooledSupply[] {
  const lists = seats.map((fit) => ({ seat: fit.seat.number, supplies: seatSupplies(plan, fit) }));
  const lines = [...sheetLines(plan, layouts), ...otherLines(plan, lists)];
  return takeFromStock(lines.toSorted(byKind), plan);
}

/** What students bring is not on the teacher's list. */
function seatSupplies(plan: KitClass, { kit, pattern, counts }: FittingSeat): Supply[] {
  const own = { ...kit, waste: plan.waste, units: plan.units, prices: plan.prices };
  const all = suppliesOfAny(own, pattern, counts);
  return all.filter(({ id }) => id === undefined || !plan.brought.includes(id));
}

function sheetLines(plan: KitClass, layouts: readonly SheetLayout<SeatPart>[]): NeededSupply[] {
  return layouts.flatMap((layout) =>
    (["card", "acetate", "paper"] as const).flatMap((material): NeededSupply[] => {
      const sheets = layout.sheets.filter((sheet) => sheet.material === material);
      const tooLarge = layout.tooLarge.filter((part) => part.material === material);
      const need = sheets.length + tooLarge.length;
      if (need === 0) return [];
      const colours = cardSheets([...sheets, ...tooLarge]);
      const price = material === "paper" ? undefined : sheetPrice(plan, material, layout.sheet.name);
      return [
        {
          kind: "material",
          id: material,
          own: undefined,
          unit: "sheet",
          sheet: layout.sheet.name,
          reason: { kind: "packed", tooLarge, ...(colours.length > 0 ? { colours } : {}) },
          need,
          worth: price === undefined ? undefined : tidy(price * need, 2),
          shares: areaShares([...new Set([...sheets.flatMap((sheet) => sheet.parts), ...tooLarge])]),
        },
      ];
    }),
  );
}

/** A sheet's price by its size, else that of all sizes. */
function sheetPrice({ prices, sheetPrices }: KitClass, material: "card" | "acetate", size: string): number | undefined {
  return sheetPrices.find(({ sheet }) => sheet === size)?.[material] ?? prices[material];
}

/** Seats share their sheets by the boxes that their parts take up, and a gauge that goes round in equal parts. */
function areaShares(parts: readonly SeatPart[]): Map<number, number> {
  const shares = new Map<number, number>();
  for (const part of parts) {
    const box = extentOf(part);
    const area = (box.right - box.left) * (box.bottom - box.top) * part.count;
    const seats = seatsOfPart(part);
    for (const seat of seats) shares.set(seat, (shares.get(seat) ?? 0) + area / seats.length);
  }
  return shares;
}

interface SeatSupply {
  readonly seat: number;
  readonly supply: Supply;
}

/** Everything but sheets: one line for each item, unit and size. */
function otherLines(
  plan: KitClass,
  lists: readonly { readonly seat: number; readonly supplies: readonly Supply[] }[],
): NeededSupply[] {
  const all = lists.flatMap(({ seat, supplies }) => supplies.map((supply): SeatSupply => ({ seat, supply })));
  const counted = all.filter(({ supply }) => supply.id !== "card" && supply.id !== "acetate");
  const groups = Map.groupBy(counted, ({ supply }) => groupOf(supply));
  return [...groups.values()].map((of) => pooledLine(plan, of));
}

/** Lights of different sizes and cells of different names are different things; other reasons tell of the seat's own book. */
function groupOf({ kind, id, own, unit, reason }: Supply): string {
  const size = reason?.kind === "light" ? [reason.diameter, reason.height] : [];
  return JSON.stringify([kind, id, nameOf(own), unit ?? own?.unit, size]);
}

function pooledLine(plan: KitClass, of: readonly SeatSupply[]): NeededSupply {
  const first = of[0]!.supply;
  const exact = sum(of.map(({ supply }) => supply.exact));
  const each = isLength(first.unit) ? toBuy(exact, first.unit) : sum(of.map(({ supply }) => supply.quantity));
  const need = Math.min(each, sharedTools(plan, first) ?? each);
  const worth = worthOf(plan, of, need);
  return {
    kind: first.kind,
    id: first.id,
    own: first.own,
    unit: first.unit,
    sheet: undefined,
    reason: { kind: "seats", seats: of.length, of: reasonOf(of) },
    need: tidy(need),
    worth: worth === undefined ? undefined : tidy(worth, 2),
    shares: new Map(of.map(({ seat, supply }) => [seat, supply.exact])),
  };
}

/** The first seat's reason; of scissors the one of a seat that may cut leaves with them, too. */
function reasonOf(of: readonly SeatSupply[]): Supply["reason"] {
  const reasons = of.map(({ supply }) => supply.reason);
  return reasons.find((reason) => reason?.kind !== "card-scissors") ?? reasons[0];
}

/** How many of a tool there are, where seats share it. */
function sharedTools({ tools }: KitClass, { id }: Supply): number | undefined {
  return id !== undefined && id in tools ? tools[id as keyof KitClass["tools"]] : undefined;
}

/** At the class's own price, or the sum of what the kits state. */
function worthOf(plan: KitClass, of: readonly SeatSupply[], need: number): number | undefined {
  const { id } = of[0]!.supply;
  const each = id !== undefined && id in plan.prices ? plan.prices[id as keyof KitClass["prices"]] : undefined;
  if (each !== undefined) return each * need;
  const own = of.map(({ supply }) => supply.price).filter((price) => price !== undefined);
  return own.length > 0 ? sum(own) : undefined;
}

function byKind(a: NeededSupply, b: NeededSupply): number {
  return a.kind === b.kind ? 0 : a.kind === "material" ? -1 : 1;
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
