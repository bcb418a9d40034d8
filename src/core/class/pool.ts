import type { SupplyId, SupplyUnit } from "../kit/supply-id.ts";
import type { SheetLayout } from "../packing/lay-out.ts";
import { extentOf } from "../packing/pack.ts";
import { isLength, toBuy } from "../supplies/lengths.ts";
import { suppliesOf } from "../supplies/supplies.ts";
import type { Supply, SupplyReason } from "../supplies/supply.ts";
import { tidy } from "../units/length.ts";
import type { SeatPart } from "./class-sheets.ts";
import type { FittingSeat } from "./fit-seats.ts";
import type { KitClass, Stock } from "./kit-class.ts";

/** A line of the class's shopping list. Quantities in `unit`, prices in the class's currency. */
export interface PooledSupply {
  readonly kind: Supply["kind"];
  /** Of a supply that the program counts; `paper` is what a guide is drawn on. */
  readonly id: SupplyId | "paper" | undefined;
  readonly own: Supply["own"];
  readonly unit: SupplyUnit | undefined;
  /** Name of the sheets' size, where it is counted in sheets. */
  readonly sheet: string | undefined;
  readonly reason: PooledReason;
  /** For all seats together, rounded up once to what can be bought. */
  readonly need: number;
  readonly stock: number;
  readonly buy: number;
  /** Price of what all seats use, and of what is still to buy; undefined where no price is stated. */
  readonly worth: number | undefined;
  readonly toPay: number | undefined;
  /** What each seat has of it, by its number: parts of a whole that need not be 1. */
  readonly shares: ReadonlyMap<number, number>;
}

/** Why a line is on the list: for so many seats, with the size or use of the thing where all share it; sheets as they are packed. */
export type PooledReason =
  | { readonly kind: "seats"; readonly seats: number; readonly of: SupplyReason | undefined }
  | { readonly kind: "packed"; readonly tooLarge: readonly SeatPart[] };

type Line = Omit<PooledSupply, "stock" | "buy" | "toPay">;

/** The shopping list of all fitting seats: sheets as they are packed over the class, lengths added before they are rounded. */
export function poolSupplies(
  plan: KitClass,
  seats: readonly FittingSeat[],
  layouts: readonly SheetLayout<SeatPart>[],
): PooledSupply[] {
  const lists = seats.map((fit) => ({ seat: fit.seat.number, supplies: seatSupplies(plan, fit) }));
  const lines = [...sheetLines(plan, layouts), ...otherLines(plan, lists)];
  return takeFromStock(lines.toSorted(byKind), plan.stock);
}

/** Stock that no line of the list has a use for. */
export function unusedStock(plan: KitClass, list: readonly PooledSupply[]): Stock[] {
  return plan.stock.filter((one) => !list.some((line) => isOfLine(one, line)));
}

function seatSupplies(plan: KitClass, { kit, pattern, counts }: FittingSeat): Supply[] {
  return suppliesOf({ ...kit, waste: plan.waste, units: plan.units, prices: plan.prices }, pattern, counts);
}

function sheetLines(plan: KitClass, layouts: readonly SheetLayout<SeatPart>[]): Line[] {
  return layouts.flatMap((layout) =>
    (["card", "acetate", "paper"] as const).flatMap((material): Line[] => {
      const sheets = layout.sheets.filter((sheet) => sheet.material === material);
      const tooLarge = layout.tooLarge.filter((part) => part.material === material);
      const need = sheets.length + tooLarge.length;
      if (need === 0) return [];
      const price = material === "paper" ? undefined : plan.prices[material];
      return [
        {
          kind: "material",
          id: material,
          own: undefined,
          unit: "sheet",
          sheet: layout.sheet.name,
          reason: { kind: "packed", tooLarge },
          need,
          worth: price === undefined ? undefined : tidy(price * need, 2),
          shares: areaShares([...new Set([...sheets.flatMap((sheet) => sheet.parts), ...tooLarge])]),
        },
      ];
    }),
  );
}

/** Seats share their sheets by the boxes that their parts take up. */
function areaShares(parts: readonly SeatPart[]): Map<number, number> {
  const shares = new Map<number, number>();
  for (const part of parts) {
    const box = extentOf(part);
    const area = (box.right - box.left) * (box.bottom - box.top) * part.count;
    shares.set(part.seat, (shares.get(part.seat) ?? 0) + area);
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
): Line[] {
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

function pooledLine(plan: KitClass, of: readonly SeatSupply[]): Line {
  const first = of[0]!.supply;
  const exact = sum(of.map(({ supply }) => supply.exact));
  const need = isLength(first.unit) ? toBuy(exact, first.unit) : sum(of.map(({ supply }) => supply.quantity));
  const worth = worthOf(plan, of, need);
  return {
    kind: first.kind,
    id: first.id,
    own: first.own,
    unit: first.unit,
    sheet: undefined,
    reason: { kind: "seats", seats: of.length, of: first.reason },
    need: tidy(need),
    worth: worth === undefined ? undefined : tidy(worth, 2),
    shares: new Map(of.map(({ seat, supply }) => [seat, supply.exact])),
  };
}

/** At the class's own price, or the sum of what the kits state. */
function worthOf(plan: KitClass, of: readonly SeatSupply[], need: number): number | undefined {
  const { id } = of[0]!.supply;
  const each = id !== undefined && id in plan.prices ? plan.prices[id as keyof KitClass["prices"]] : undefined;
  if (each !== undefined) return each * need;
  const own = of.map(({ supply }) => supply.price).filter((price) => price !== undefined);
  return own.length > 0 ? sum(own) : undefined;
}

/** Stock is taken off the lines that it is for, one after the other. */
function takeFromStock(lines: readonly Line[], stock: readonly Stock[]): PooledSupply[] {
  const left = stock.map((one) => ({ ...one }));
  return lines.map((line) => {
    let buy = line.need;
    for (const one of left.filter((other) => isOfLine(other, line))) {
      const taken = Math.min(one.quantity, buy);
      one.quantity -= taken;
      buy -= taken;
    }
    const rest = toBuy(buy, line.unit);
    return {
      ...line,
      stock: tidy(line.need - rest),
      buy: rest,
      toPay: line.worth === undefined ? undefined : tidy((line.worth * rest) / line.need, 2),
    };
  });
}

/** What the program counts is told by its id, another thing by the name that kit and class give it. */
function isOfLine(stock: Stock, { id, own }: Pick<PooledSupply, "id" | "own">): boolean {
  return stock.id === undefined ? nameOf(stock) === nameOf(own) : stock.id === id;
}

function nameOf(thing: { readonly item: string } | undefined): string | undefined {
  return thing?.item.trim().toLowerCase();
}

function byKind(a: Line, b: Line): number {
  return a.kind === b.kind ? 0 : a.kind === "material" ? -1 : 1;
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
