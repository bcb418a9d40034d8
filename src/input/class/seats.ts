import type { Seat } from "../../core/class/kit-class.ts";
import type { Kit } from "../../core/kit/kit.ts";
import type { Refit } from "../../core/refit/refit.ts";
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

/**
 * The seats of front matter and books table together, in the order of their numbers: a seat may stand in one and have its
 * book in the other. @throws ProblemError
 */
export function seatsOf(data: ClassMatter, table: SeatsTable, kits: readonly Kit[]): Seat[] {
  checkTwice(data.seats);
  const fromTable = new Map(table.seats);
  const seats = data.seats.map((seat, i) => {
    const at = ["seats", i];
    const row = fromTable.get(seat.seat);
    fromTable.delete(seat.seat);
    if (row?.book && seat.book)
      throw problem([...at, "book"], {
        given: say.frontTwoBooks({ seat: seat.seat, table: table.file }),
        allowed: say.frontOneBook(),
        remedy: say.frontRemoveBook(),
      });
    return toSeat({ ...row, ...defined(seat) }, data, kits, at);
  });
  const rest = [...fromTable.values()].map((seat) => toSeat(seat, data, kits, ["books"]));
  const all = [...seats, ...rest].sort((a, b) => a.number - b.number);
  if (all.length > 0) return all;
  throw problem(["seats"], {
    given: say.frontNoSeat(),
    allowed: say.frontSomeSeat(),
    remedy: say.frontAddSeats(),
  });
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
  const kit = seat.kit === undefined ? kits[0]! : kitNamed(seat.kit, { kits, broken: [], drafts: [] }, [...at, "kit"]);
  if (!seat.book)
    throw problem(at, {
      given: say.frontSeatNoBook({ seat: seat.seat }),
      allowed: say.frontSeatBook(),
      remedy: say.frontMeasureSeat(),
    });
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
    book: defined(seat.book) as Refit,
    refit: refitOf(seat, kit),
    pace: seat.pace ?? data.pace,
  };
}

/** What the seat's book changes of its kit; what is the same as the kit's own is left out, so that addresses stay short. */
function refitOf(seat: SeatMatter, kit: Kit): Refit {
  const { book, fit, light } = seat;
  const wish = defined({
    ...book,
    ...fit,
    lightDiameter: kit.light && light?.diameter,
    lightHeight: kit.light && light?.height,
  });
  const own: Refit = { pageOneLeaf: kit.book.pageOneLeaf, plates: kit.book.plates, direction: kit.book.direction };
  const changed = Object.entries(wish).filter(
    ([key, value]) => JSON.stringify(value) !== JSON.stringify(own[key as keyof Refit]),
  );
  return Object.fromEntries(changed);
}

function defined<T extends object>(object: T): T {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as T;
}
