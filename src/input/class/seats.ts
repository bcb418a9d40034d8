import type { KitClass, Seat } from "../../core/class/kit-class.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Refit } from "../../core/refit/refit.ts";
import type { UnitSystem } from "../../core/units/length.ts";
import * as say from "../../words/messages.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { kitNamed } from "./kit-named.ts";
import type { ClassMatter } from "./schema.ts";
import type { SeatMatter } from "./table-seats.ts";

/** What a books table has of seats, by their numbers. */
export interface SeatsTable {
  readonly file: string;
  readonly seats: ReadonlyMap<number, SeatMatter>;
}

/** A class's seats in the order of their numbers: those with a book, and those whose books are still to come. */
export type Seats = Pick<KitClass, "seats" | "awaiting">;

/**
 * The seats of front matter and books table together: a seat may stand in one and have its book in the other, and one of
 * `places` in neither. @throws ProblemError
 */
export function seatsOf(data: ClassMatter, table: SeatsTable, kits: readonly Kit[]): Seats {
  checkTwice(data.seats);
  const stated = new Map<number, Stated>(
    Array.from({ length: data.places ?? 0 }, (_, i) => [i + 1, { matter: { seat: i + 1 }, at: ["places"] }]),
  );
  for (const [number, matter] of table.seats) stated.set(number, { matter, at: ["books"] });
  for (const [i, matter] of data.seats.entries()) {
    const at = ["seats", i];
    checkOneBook(matter, table, at);
    stated.set(matter.seat, { matter: { ...table.seats.get(matter.seat), ...defined(matter) }, at });
  }
  if (stated.size === 0) throw noSeat();
  const all = [...stated.values()].toSorted((a, b) => a.matter.seat - b.matter.seat);
  return {
    seats: all.filter(({ matter }) => matter.book).map(({ matter, at }) => toSeat(matter, data, kits, at)),
    awaiting: all
      .filter(({ matter }) => !matter.book)
      .map(({ matter: { seat, kit }, at }) => ({ number: seat, kit: settledKit(kit, kits, at) })),
  };
}

/** A seat with the place in the front matter that states it, or names its table. */
interface Stated {
  readonly matter: SeatMatter;
  readonly at: FieldPath;
}

function checkOneBook(seat: SeatMatter, table: SeatsTable, at: FieldPath): void {
  if (!seat.book || !table.seats.get(seat.seat)?.book) return;
  throw problem([...at, "book"], {
    given: say.frontTwoBooks({ seat: seat.seat, table: table.file }),
    allowed: say.frontOneBook(),
    remedy: say.frontRemoveBook(),
  });
}

function noSeat(): Error {
  return problem(["seats"], {
    given: say.frontNoSeat(),
    allowed: say.frontSomeSeat(),
    remedy: say.frontAddSeats(),
  });
}

/** The kit that is stated, or the class's only one. */
function settledKit(name: string | undefined, kits: readonly Kit[], at: FieldPath): Kit | undefined {
  if (name !== undefined) return statedKit(name, kits, at);
  return kits.length === 1 ? kits[0] : undefined;
}

function statedKit(name: string, kits: readonly Kit[], at: FieldPath): Kit {
  return kitNamed(name, { kits, broken: [], drafts: [] }, [...at, "kit"]);
}

function checkTwice(seats: readonly SeatMatter[]): void {
  const again = seats.findIndex(({ seat }, i) => seats.findIndex((one) => one.seat === seat) !== i);
  if (again < 0) return;
  throw problem(["seats", again, "seat"], {
    given: say.frontSeatTwice({ seat: seats[again]!.seat }),
    allowed: say.frontSeatOnce(),
    remedy: say.frontNumberSeats(),
  });
}

function toSeat(seat: SeatMatter, data: ClassMatter, kits: readonly Kit[], at: FieldPath): Seat {
  const kit = seat.kit === undefined ? kits[0]! : statedKit(seat.kit, kits, at);
  const depths = seat.fit?.depths?.length;
  if (depths !== undefined && depths !== kit.levels.length)
    throw problem([...at, "fit", "depths"], {
      given: say.frontDepths({ count: depths }),
      allowed: say.frontDepthsOfKit({
        count: kit.levels.length,
        kit: kit.slug,
        levels: kit.levels.map((level) => level.name).join(", "),
      }),
      remedy: say.frontStateDepths(),
    });
  return {
    number: seat.seat,
    kit,
    book: defined(seat.book ?? {}) as Refit,
    refit: refitOf(seat, kit, data.units),
    pace: seat.pace ?? data.pace,
  };
}

/** What the seat's book and the class's units change of its kit; what is the same as the kit's own is left out, so that addresses stay short. */
function refitOf(seat: SeatMatter, kit: Kit, units: UnitSystem): Refit {
  const { book, fit, light } = seat;
  const wish = defined({
    ...book,
    ...fit,
    units,
    lightDiameter: kit.light && light?.diameter,
    lightHeight: kit.light && light?.height,
  });
  const { pageOneLeaf, plates, direction } = kit.book;
  const own: Refit = { pageOneLeaf, plates, direction, units: kit.units };
  const changed = Object.entries(wish).filter(
    ([key, value]) => JSON.stringify(value) !== JSON.stringify(own[key as keyof Refit]),
  );
  return Object.fromEntries(changed);
}

function defined<T extends object>(object: T): T {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as T;
}
