import type { AwaitingSeat, KitClass, Seat } from "../../core/class/kit-class.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Refit } from "../../core/refit/refit.ts";
import * as say from "../../words/messages.ts";
import { eachOf } from "../files/each-of.ts";
import { type FieldPath, problem } from "../files/problem.ts";
import { kitNamed, offeredOf } from "./kit-named.ts";
import type { ClassMatter } from "./schema.ts";
import { defined, refitOf } from "./seat-refit.ts";
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
 * `places` in neither. @throws ProblemError with all that is wrong in the front matter's seats
 */
export function seatsOf(data: ClassMatter, table: SeatsTable, kits: readonly Kit[]): Seats {
  const placed = eachOf<Seat | AwaitingSeat | undefined>([
    ...data.seats.map((_, i) => () => checkOnce(data.seats, i)),
    ...data.seats.map((seat, i) => () => checkOneBook(seat, table, ["seats", i])),
    ...statedSeats(data, table).map((one) => () => placeSeat(one, data, { table, kits })),
  ]).filter((one) => one !== undefined);
  return {
    seats: placed.filter((one): one is Seat => "book" in one),
    awaiting: placed.filter((one) => !("book" in one)),
  };
}

/** All seats in the order of their numbers, wherever they are stated. @throws ProblemError where there is none */
function statedSeats(data: ClassMatter, table: SeatsTable): Stated[] {
  const stated = new Map<number, Stated>(
    Array.from({ length: data.places ?? 0 }, (_, i) => [i + 1, { matter: { seat: i + 1 }, at: ["places"] }]),
  );
  for (const [number, matter] of table.seats) stated.set(number, { matter, at: ["books"] });
  checkPlaces(data, [...stated.keys()]);
  for (const [i, matter] of data.seats.entries())
    stated.set(matter.seat, { matter: { ...table.seats.get(matter.seat), ...defined(matter) }, at: ["seats", i] });
  if (stated.size === 0) throw noSeat();
  return [...stated.values()].toSorted((a, b) => a.matter.seat - b.matter.seat);
}

/** @throws ProblemError for a seat beyond the places that are stated: a slip of the pen, or a place too few */
function checkPlaces({ places, seats }: ClassMatter, table: readonly number[]): void {
  const most = Math.max(0, ...table, ...seats.map(({ seat }) => seat));
  if (places === undefined || most <= places) return;
  throw problem(["places"], {
    given: say.frontSeatBeyond({ seat: most, places }),
    allowed: say.frontSeatPlaces({ places }),
    remedy: say.frontSeatPlacesDo({ seat: most }),
  });
}

function placeSeat(
  { matter, at }: Stated,
  data: ClassMatter,
  { table, kits }: { readonly table: SeatsTable; readonly kits: readonly Kit[] },
): Seat | AwaitingSeat {
  if (matter.book) {
    const bookIn = table.seats.get(matter.seat)?.book ? "table" : "matter";
    return { ...toSeat(matter, data, kits, at), bookIn };
  }
  const foldStyle = matter.fit?.foldStyle;
  return { number: matter.seat, kit: settledKit(matter.kit, kits, at), ...(foldStyle ? { foldStyle } : {}) };
}

/** A seat with the place in the front matter that states it, or names its table. */
interface Stated {
  readonly matter: SeatMatter;
  readonly at: FieldPath;
}

function checkOneBook(seat: SeatMatter, table: SeatsTable, at: FieldPath): undefined {
  if (!seat.book || !table.seats.get(seat.seat)?.book) return undefined;
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
  return kitNamed(name, { ...offeredOf(kits), broken: [], drafts: [] }, [...at, "kit"]);
}

function checkOnce(seats: readonly SeatMatter[], at: number): undefined {
  const { seat } = seats[at]!;
  if (seats.findIndex((one) => one.seat === seat) === at) return undefined;
  throw problem(["seats", at, "seat"], {
    given: say.frontSeatTwice({ seat }),
    allowed: say.frontSeatOnce(),
    remedy: say.frontNumberSeats(),
  });
}

function toSeat(seat: SeatMatter, data: ClassMatter, kits: readonly Kit[], at: FieldPath): Omit<Seat, "bookIn"> {
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
