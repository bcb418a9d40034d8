import type { Priced } from "../kit/kit.ts";
import type { Layout } from "../packing/lay-out.ts";
import { extentOf } from "../packing/pack.ts";
import { isLength, lengthToBuy, type Supply, suppliesOf } from "../supplies/supplies.ts";
import { tidy } from "../units/length.ts";
import type { SeatPart } from "./class-sheets.ts";
import type { FittingSeat } from "./fit-seats.ts";
import type { KitClass } from "./kit-class.ts";

/** A line of the class's shopping list. Quantities in `unit`, prices in the class's currency. */
export interface PooledSupply {
  readonly kind: Supply["kind"];
  readonly id: Priced | undefined;
  readonly item: string;
  readonly unit: string;
  readonly note: string;
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

type Line = Omit<PooledSupply, "stock" | "buy" | "toPay">;

/** The shopping list of all fitting seats: sheets as they are packed over the class, lengths added before they are rounded. */
export function poolSupplies(
  plan: KitClass,
  seats: readonly FittingSeat[],
  parts: readonly SeatPart[],
  layouts: readonly Layout[],
): PooledSupply[] {
  const lists = seats.map((fit) => ({ seat: fit.seat.number, supplies: seatSupplies(plan, fit) }));
  const lines = [...sheetLines(plan, parts, layouts), ...otherLines(plan, lists)];
  return takeFromStock(lines.toSorted(byKind), plan.stock);
}

/** Stock that no line of the list has a use for. */
export function unusedStock(plan: KitClass, list: readonly PooledSupply[]): string[] {
  return plan.stock.filter((one) => !list.some((line) => isCalled(line, one.item))).map((one) => one.item);
}

function seatSupplies(plan: KitClass, { kit, pattern, counts }: FittingSeat): Supply[] {
  return suppliesOf({ ...kit, waste: plan.waste, units: plan.units, prices: plan.prices }, pattern, counts);
}

function sheetLines(plan: KitClass, parts: readonly SeatPart[], layouts: readonly Layout[]): Line[] {
  return layouts.flatMap((layout) =>
    (["card", "acetate", "paper"] as const).flatMap((material) => {
      const sheets = layout.sheets.filter((sheet) => sheet.material === material);
      const tooLarge = layout.tooLarge.filter((name) => materialOf(parts, name) === material);
      const need = sheets.length + tooLarge.length;
      if (need === 0) return [];
      const laid = new Set([...sheets.flatMap((sheet) => sheet.parts), ...tooLarge]);
      const price = material === "paper" ? undefined : plan.prices[material];
      const note = tooLarge.length > 0 ? `too small for ${tooLarge.join(", ")}` : "packed over all seats";
      return [
        {
          kind: "material" as const,
          id: material === "paper" ? undefined : material,
          item: material,
          unit: `${layout.sheet.name} ${need === 1 ? "sheet" : "sheets"}`,
          note,
          need,
          worth: price === undefined ? undefined : tidy(price * need, 2),
          shares: areaShares(parts.filter(({ part }) => laid.has(part.name) && part.material === material)),
        },
      ];
    }),
  );
}

function materialOf(parts: readonly SeatPart[], name: string): string | undefined {
  return parts.find(({ part }) => part.name === name)?.part.material;
}

/** Seats share their sheets by the boxes that their parts take up. */
function areaShares(parts: readonly SeatPart[]): Map<number, number> {
  const shares = new Map<number, number>();
  for (const { seat, part } of parts) {
    const box = extentOf(part);
    const area = (box.right - box.left) * (box.bottom - box.top) * part.count;
    shares.set(seat, (shares.get(seat) ?? 0) + area);
  }
  return shares;
}

interface SeatSupplies {
  readonly seat: number;
  readonly supplies: readonly Supply[];
}

/** Everything but sheets: one line for each item, unit and size. */
function otherLines(plan: KitClass, lists: readonly SeatSupplies[]): Line[] {
  const groups = new Map<string, { readonly first: Supply; readonly of: { seat: number; supply: Supply }[] }>();
  for (const { seat, supplies } of lists) {
    for (const supply of supplies) {
      if (supply.id === "card" || supply.id === "acetate") continue;
      const key = groupOf(supply);
      const group = groups.get(key) ?? { first: supply, of: [] };
      group.of.push({ seat, supply });
      groups.set(key, group);
    }
  }
  return [...groups.values()].map(({ first, of }) => pooledLine(plan, first, of));
}

/** Lights of different sizes are different things; notes of other supplies tell of the seat's own book. */
function groupOf(supply: Supply): string {
  const size = supply.id === "light" ? supply.note : "";
  return JSON.stringify([supply.kind, supply.id ?? supply.item.toLowerCase(), supply.id ? "" : supply.unit, size]);
}

function pooledLine(plan: KitClass, first: Supply, of: readonly { seat: number; supply: Supply }[]): Line {
  const exact = sum(of.map(({ supply }) => supply.exact));
  const need = isLength(first.unit) ? lengthToBuy(exact, first.unit) : sum(of.map(({ supply }) => supply.quantity));
  const each = first.id === undefined ? undefined : plan.prices[first.id];
  const own = of.map(({ supply }) => supply.price).filter((price) => price !== undefined);
  const worth = each === undefined ? (own.length > 0 ? sum(own) : undefined) : each * need;
  return {
    kind: first.kind,
    id: first.id,
    item: first.id === "blades" ? "craft-knife blades" : first.item,
    unit: first.kind === "tool" ? "" : plural(first.unit, need),
    note: noteOf(first, of.length),
    need: tidy(need),
    worth: worth === undefined ? undefined : tidy(worth, 2),
    shares: new Map(of.map(({ seat, supply }) => [seat, supply.exact])),
  };
}

function noteOf(first: Supply, seats: number): string {
  const forSeats = seats === 1 ? "for one seat" : `for ${seats} seats`;
  if (first.id === "light" || (first.kind === "tool" && first.item !== "packing")) return `${first.note}; ${forSeats}`;
  if (first.id === "book") return "one a seat, as the roster measures them";
  return forSeats;
}

function plural(unit: string, need: number): string {
  const plurals: Readonly<Record<string, string>> = {
    book: "books",
    blade: "blades",
    light: "lights",
    button: "buttons",
    set: "sets",
  };
  return need === 1 ? unit : (plurals[unit] ?? unit);
}

/** Stock is taken off the lines that it is named after, one after the other. */
function takeFromStock(lines: readonly Line[], stock: KitClass["stock"]): PooledSupply[] {
  const left = stock.map((one) => ({ ...one }));
  return lines.map((line) => {
    let buy = line.need;
    for (const one of left.filter((other) => isCalled(line, other.item))) {
      const taken = Math.min(one.quantity, buy);
      one.quantity -= taken;
      buy -= taken;
    }
    const rest = lengthToBuy(buy, line.unit);
    return {
      ...line,
      stock: tidy(line.need - rest),
      buy: rest,
      toPay: line.worth === undefined ? undefined : tidy((line.worth * rest) / line.need, 2),
    };
  });
}

function isCalled(line: Pick<PooledSupply, "item" | "id" | "unit">, name: string): boolean {
  const names = [line.item, line.id ?? "", `${line.unit} of ${line.item}`, line.item.replace(/s$/, "")];
  return names.some((one) => one.toLowerCase() === name.trim().toLowerCase());
}

function byKind(a: Line, b: Line): number {
  return a.kind === b.kind ? 0 : a.kind === "material" ? -1 : 1;
}

function sum(values: readonly number[]): number {
  return values.reduce((a, b) => a + b, 0);
}
