import { classLayouts, seatParts } from "../../../core/class/class-sheets.ts";
import { fitSeats } from "../../../core/class/fit-seats.ts";
import type { KitClass } from "../../../core/class/kit-class.ts";
import { poolSupplies } from "../../../core/class/pool.ts";
import { type NamedSheet, namedSheets } from "../../../core/class/preparation.ts";
import { scheduleOf } from "../../../core/class/schedule.ts";
import { unusedStock } from "../../../core/class/stock.ts";
import { lazily, once } from "../../../core/lazily.ts";
import { closingOf } from "../../../core/pattern/corner-pattern.ts";
import type { Caution } from "../../../core/plan/caution.ts";
import { dayText } from "../../../words/dates.ts";
import * as say from "../../../words/messages.ts";
import { materialName } from "../../../words/parts.ts";
import { cutSheetFigure } from "../../drawing/class/cut-sheet.ts";
import type { Figure } from "../../drawing/figure.ts";
import type { AnyKitView } from "../any-kit-view.ts";
import { type BagView, bagViews, sharedGauges } from "./bags-view.ts";
import { type EveningView, eveningView } from "./evening-view.ts";
import { type Handout, handoutsOf } from "./handout-views.ts";
import { type PreparationRow, preparationRows } from "./preparation-view.ts";
import { type RoomView, roomView } from "./room-view.ts";
import { type ScheduleRow, type SessionView, scheduleRows, sessionViews } from "./schedule-view.ts";
import { awaitingSeatView, fittingSeatView, misfitSeatView, type SeatView } from "./seat-view.ts";
import { type CostsView, costsView, type ShoppingRow, shoppingRows } from "./shopping-view.ts";

/** Everything that a class's pages, teacher's packet and files show. */
export interface ClassView {
  readonly slug: string;
  readonly plan: KitClass;
  readonly date: string;
  readonly seats: readonly SeatView[];
  readonly sessions: readonly SessionView[];
  readonly schedule: readonly ScheduleRow[];
  readonly evening: EveningView;
  /** What is shown and kept in the room. */
  readonly room: RoomView;
  readonly shopping: readonly ShoppingRow[];
  /** What the teacher calls the things that no line has a use for; none while no book fits, and so nothing is listed. */
  readonly unusedStock: readonly string[];
  readonly costs: CostsView | undefined;
  readonly preparation: readonly PreparationRow[];
  readonly bags: readonly BagView[];
  /** Gauges that go round, each in a sentence or two. */
  readonly sharedGauges: readonly string[];
  readonly sheets: readonly NamedSheet[];
  readonly sheetFigures: readonly SheetFigure[];
  /** Those of all that is made, or may be. */
  readonly cautions: readonly Caution[];
  /** The class's kits, in its order. */
  readonly kits: readonly AnyKitView[];
  /** What is made, or may be chosen: every kit, in each way in which a seat makes it. */
  readonly handouts: readonly Handout[];
  /** The same without names; all kits where there are no seats any more. */
  readonly made: readonly AnyKitView[];
  /** Whether a seat that fits has a light, and whether one has a window. */
  readonly hasLight: boolean;
  readonly hasWindow: boolean;
}

/** Whether a seat has a knife, or may yet have one: a class without seats may have any. */
export function hasKnives({ seats }: Pick<ClassView, "seats">): boolean {
  return seats.length === 0 || seats.some(({ knifeFree }) => !knifeFree);
}

/** A merged cut sheet, small. */
export interface SheetFigure extends Figure {
  readonly name: string;
  /** `A4 card`. */
  readonly size: string;
}

/** Works out a class. `siteUrl` is the site's own address, for the seats' codes. Pure. */
export function viewClass(
  plan: KitClass,
  kits: readonly AnyKitView[],
  cautions: readonly Caution[],
  siteUrl?: string,
): ClassView {
  const { fitting, misfits } = fitSeats(plan.seats, plan.kits, plan);
  const schedules = once(() => scheduleOf(plan, fitting));
  const parts = once(() => seatParts(fitting));
  const layouts = once(() => classLayouts(parts(), plan.sheets));
  const sheets = once(() => namedSheets(layouts()));
  const shopping = once(() => poolSupplies(plan, fitting, layouts()));
  const setting = { plan, siteUrl, cautions };
  const seats = once(() =>
    [
      ...schedules().map((schedule) => fittingSeatView(schedule.fit, schedule, setting)),
      ...misfits.map((misfit) => misfitSeatView(misfit, setting)),
      ...plan.awaiting.map((seat) => awaitingSeatView(seat, setting)),
    ].sort((a, b) => a.number - b.number),
  );
  const own = plan.kits.map((kit) => kits.find((view) => view.slug === kit.slug)!);
  const handouts = once(() => handoutsOf(own, { plan, fitting, cautions }));
  // A class without seats tells of all its kits.
  const made = once(() => (handouts().length > 0 ? handouts().map(({ view }) => view) : own));
  return lazily<ClassView>({
    slug: () => plan.slug,
    plan: () => plan,
    date: () => dayText(plan.date),
    seats,
    sessions: () => sessionViews(plan),
    schedule: () => scheduleRows(plan, schedules()),
    evening: () => eveningView(plan, schedules()),
    room: () => roomView(plan, schedules()),
    shopping: () => shoppingRows(plan, shopping()),
    unusedStock: () => (fitting.length === 0 ? [] : unusedStock(plan, shopping()).map(({ item }) => item)),
    costs: () => costsView(plan, shopping(), fitting),
    preparation: () => preparationRows(parts(), sheets(), fitting.length),
    bags: () => bagViews(parts(), sheets()),
    sharedGauges: () => sharedGauges(parts()),
    sheets,
    sheetFigures: () => sheets().map(sheetFigure),
    cautions: () => cautions.filter((caution) => made().some((view) => view.cautions.includes(caution))),
    kits: () => own,
    handouts,
    made,
    hasLight: () => fitting.some(({ pattern }) => closingOf(pattern).pocket !== undefined),
    hasWindow: () => fitting.some(({ pattern }) => closingOf(pattern).window !== undefined),
  });
}

function sheetFigure(one: NamedSheet): SheetFigure {
  const size = say.teacherSheet({ size: one.size.name, material: materialName(one.sheet) });
  return { ...cutSheetFigure(one), name: one.name, size };
}
