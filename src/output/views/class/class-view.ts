import { classLayouts, type SeatPart, seatParts } from "../../../core/class/class-sheets.ts";
import { type ClassCosts, costsOf } from "../../../core/class/costs.ts";
import { type FittingSeat, fitSeats } from "../../../core/class/fit-seats.ts";
import type { KitClass } from "../../../core/class/kit-class.ts";
import { type PooledSupply, poolSupplies, unusedStock } from "../../../core/class/pool.ts";
import { type NamedSheet, namedSheets, partCounts } from "../../../core/class/preparation.ts";
import { scheduleOf } from "../../../core/class/schedule.ts";
import { cutSheetFigure } from "../../drawing/class/cut-sheet.ts";
import type { Figure } from "../../drawing/figure.ts";
import type { Caution } from "../cautions.ts";
import type { KitView } from "../kit-view.ts";
import { lazily, once } from "../lazily.ts";
import { type ScheduleRow, type SessionView, scheduleRows, sessionViews } from "./schedule-view.ts";
import { fittingSeatView, misfitSeatView, type SeatView } from "./seat-view.ts";
import { dateText, seatsText } from "./words.ts";

/** Everything that a class's pages, teacher's packet and files show. */
export interface ClassView {
  readonly slug: string;
  readonly plan: KitClass;
  readonly date: string;
  readonly seats: readonly SeatView[];
  /** Seats whose book carries their kit, computed. */
  readonly fitting: readonly FittingSeat[];
  readonly sessions: readonly SessionView[];
  readonly schedule: readonly ScheduleRow[];
  readonly shopping: readonly PooledSupply[];
  readonly unusedStock: readonly string[];
  readonly costs: CostsView | undefined;
  readonly preparation: readonly PreparationRow[];
  readonly sheets: readonly NamedSheet[];
  readonly sheetFigures: readonly (Figure & { readonly name: string; readonly size: string })[];
  /** Those of all its kits. */
  readonly cautions: readonly Caution[];
  /** The handout: the steps of every kit of the class. */
  readonly handouts: readonly KitView[];
  /** What may disappoint, by seat. */
  readonly warnings: readonly { readonly seat: number; readonly warnings: readonly string[] }[];
}

export interface CostsView {
  readonly seats: ReadonlyMap<number, string>;
  readonly used: string;
  readonly toPay: string;
}

export interface PreparationRow {
  readonly what: string;
  readonly seats: string;
  readonly sheets: string;
}

/** Works out a class. `siteUrl` is the site's own address, for the seats' codes. Pure. */
export function viewClass(
  plan: KitClass,
  kits: readonly KitView[],
  cautions: readonly Caution[],
  siteUrl?: string,
): ClassView {
  const { fitting, misfits } = fitSeats(plan.seats, plan.kits, plan.units);
  const schedules = once(() => scheduleOf(plan, fitting));
  const parts = once(() => seatParts(fitting));
  const layouts = once(() => classLayouts(parts(), plan.sheets));
  const sheets = once(() => namedSheets(layouts()));
  const shopping = once(() => poolSupplies(plan, fitting, parts(), layouts()));
  const setting = { plan, siteUrl, cautions };
  const seats = once(() =>
    [
      ...schedules().map((schedule) => fittingSeatView(schedule.fit, schedule, setting)),
      ...misfits.map((misfit) => misfitSeatView(misfit, setting)),
    ].sort((a, b) => a.number - b.number),
  );
  const own = plan.kits.map((kit) => kits.find((view) => view.slug === kit.slug)!);
  return lazily<ClassView>({
    slug: () => plan.slug,
    plan: () => plan,
    date: () => dateText(plan.date),
    seats,
    fitting: () => fitting,
    sessions: () => sessionViews(plan),
    schedule: () => scheduleRows(plan, schedules()),
    shopping,
    unusedStock: () => unusedStock(plan, shopping()),
    costs: () =>
      costsView(
        plan,
        costsOf(
          shopping(),
          fitting.map((fit) => fit.seat.number),
        ),
      ),
    preparation: () => preparationRows(parts(), sheets(), fitting),
    sheets,
    sheetFigures: () =>
      sheets().map((one) => ({
        ...cutSheetFigure(one),
        name: one.name,
        size: `${one.size.name} ${one.sheet.material}`,
      })),
    cautions: () => cautions.filter((caution) => own.some((view) => view.cautions.includes(caution))),
    handouts: () => own.filter((view) => plan.seats.some((seat) => seat.kit.slug === view.slug)),
    warnings: () =>
      fitting
        .filter(({ pattern }) => pattern.warnings.length > 0)
        .map(({ seat, pattern }) => ({ seat: seat.number, warnings: pattern.warnings })),
  });
}

function costsView(plan: KitClass, costs: ClassCosts | undefined): CostsView | undefined {
  const money = (amount: number): string => `${amount.toFixed(2)} ${plan.currency}`.trim();
  return (
    costs && {
      seats: new Map([...costs.seats].map(([seat, amount]) => [seat, money(amount)])),
      used: money(costs.used),
      toPay: money(costs.toPay),
    }
  );
}

/** What is cut before the class, in the order of the sheets: card first, then what is cut from other stuff. */
function preparationRows(
  parts: readonly SeatPart[],
  sheets: readonly NamedSheet[],
  fitting: readonly FittingSeat[],
): PreparationRow[] {
  const order = ["card", "acetate", "paper"];
  const everyone = fitting.map((fit) => fit.seat.number);
  return partCounts(parts, sheets)
    .toSorted((a, b) => order.indexOf(a.material) - order.indexOf(b.material))
    .map((row) => ({
      what: `${row.count} × ${row.kind}, ${row.material}`,
      seats: row.seats.length === everyone.length ? "all seats that fit" : seatsText(row.seats),
      sheets: row.sheets.join(", "),
    }));
}
