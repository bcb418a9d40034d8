import type { Seat } from "../../core/class/kit-class.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { Problem } from "../../core/problem.ts";
import type { Refit } from "../../core/refit/refit.ts";
import { KitError } from "../files/message.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import type { BookRow } from "./read-books.ts";
import { bookRow, type ClassMatter, classJsonSchema } from "./schema.ts";

type SeatMatter = ClassMatter["seats"][number];

/**
 * The seats of front matter and books table together, in the order of their numbers: a seat may stand in one and have its
 * book in the other. @throws Problem for the front matter, KitError for the table
 */
export function seatsOf(data: ClassMatter, rows: readonly BookRow[], table: string, kits: readonly Kit[]): Seat[] {
  const stated = data.seats.map((seat, i) => ({ seat, field: `seats.${i}` }));
  checkTwice(stated);
  const fromTable = readRows(rows, table, data.kits);
  const seats = stated.map(({ seat, field }) => {
    const row = fromTable.get(seat.seat);
    fromTable.delete(seat.seat);
    if (row?.book && seat.book)
      throw new Problem([...split(field), "book"], {
        given: `seat ${seat.seat} has a book here and in ${table}`,
        allowed: "one book a seat",
        remedy: "remove one of them",
      });
    return toSeat({ ...row, ...defined(seat) }, data, kits, field);
  });
  const rest = [...fromTable.values()].map((seat) => toSeat(seat, data, kits, "books"));
  const all = [...seats, ...rest].sort((a, b) => a.number - b.number);
  if (all.length > 0) return all;
  throw new Problem("seats", {
    given: "no seat",
    allowed: "at least one seat, here or in a books table",
    remedy: "add seats, each with its number and book",
  });
}

/** @throws Problem where no kit has the name. */
export function kitNamed(name: string, kits: readonly Kit[], field: string): Kit {
  const kit = kits.find((one) => one.slug === name);
  if (kit) return kit;
  throw new Problem(field, {
    given: `given "${name}"`,
    allowed: `a kit: ${kits.map((one) => one.slug).join(", ")}`,
    remedy: "correct the name",
  });
}

function checkTwice(stated: readonly { readonly seat: SeatMatter; readonly field: string }[]): void {
  for (const [i, { seat, field }] of stated.entries()) {
    if (stated.findIndex((one) => one.seat.seat === seat.seat) === i) continue;
    throw new Problem([...split(field), "seat"], {
      given: `seat ${seat.seat} stands here a second time`,
      allowed: "each number once",
      remedy: "give every seat a number of its own",
    });
  }
}

function readRows(rows: readonly BookRow[], table: string, kits: readonly string[]): Map<number, SeatMatter> {
  const seats = new Map<number, SeatMatter>();
  for (const row of rows) {
    const parsed = bookRow.safeParse(row.value);
    if (!parsed.success)
      throw new KitError(
        schemaMessages(table, row, parsed.error.issues, classJsonSchema().properties!["seats"]!.items!),
      );
    const seat = parsed.data;
    const wrong = (field: string, given: string, allowed: string): KitError =>
      new KitError([{ file: table, ...row.placeOf([field]), field, given, allowed, remedy: "correct this cell" }]);
    if (seats.has(seat.seat)) throw wrong("seat", `seat ${seat.seat} stands here a second time`, "each number once");
    if (seat.kit !== undefined && !kits.includes(seat.kit))
      throw wrong("kit", `given "${seat.kit}"`, `a kit of the class: ${kits.join(", ")}`);
    seats.set(seat.seat, seat);
  }
  return seats;
}

function toSeat(seat: SeatMatter, data: ClassMatter, kits: readonly Kit[], field: string): Seat {
  const kit = seat.kit === undefined ? kits[0]! : kitNamed(seat.kit, kits, `${field}.kit`);
  if (!seat.book)
    throw new Problem(split(field), {
      given: `seat ${seat.seat} has no book`,
      allowed: "a book for every seat: here, or in the books table",
      remedy: "measure its book and add it",
    });
  const levels = seat.fit?.depths?.length;
  if (levels !== undefined && levels !== kit.levels.length)
    throw new Problem([...split(field), "fit", "depths"], {
      given: `${levels} depths`,
      allowed: `${kit.levels.length}, one for each level of ${kit.slug}: ${kit.levels.map((level) => level.name).join(", ")}`,
      remedy: "state one for each level, front to back",
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

function split(field: string): (string | number)[] {
  return field.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}
