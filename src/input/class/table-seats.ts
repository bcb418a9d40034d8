import type { Kit } from "../../core/kit/kit.ts";
import * as say from "../../words/messages.ts";
import { KitError, type KitMessage } from "../files/message.ts";
import { readEach } from "../files/readings.ts";
import { schemaMessages } from "../files/schema-messages.ts";
import type { TableRow } from "../tables/table-row.ts";
import { personAdvice } from "./person-keys.ts";
import { type BookRow, readBooks } from "./read-books.ts";
import { type ClassMatter, classJsonSchema } from "./schema.ts";
import { bookRow } from "./schema-seat.ts";

/** A seat as front matter or table states it. */
export type SeatMatter = ClassMatter["seats"][number];

/** The seats of a books table by their numbers. @throws KitError with everything wrong in all of its rows */
export function tableSeats(file: string, rows: readonly TableRow[], kits: readonly Kit[]): Map<number, SeatMatter> {
  const books = readBooks(file, rows, kits);
  const read = readEach(books.made, (row) => ({ row, seat: readRow(file, row) }));
  const seats = new Map<number, SeatMatter>();
  const clashes: KitMessage[] = [];
  for (const { row, seat } of read.made) {
    const wrong = (field: string, given: string, allowed: string): void => {
      clashes.push({ ...placed(file, row, field), given, allowed, remedy: say.frontCorrectCell() });
    };
    if (seats.has(seat.seat)) wrong("seat", say.frontSeatTwice({ seat: seat.seat }), say.frontSeatOnce());
    const named = kits.map(({ slug }) => slug);
    if (seat.kit !== undefined && !named.includes(seat.kit))
      wrong("kit", say.frontGivenText({ value: seat.kit }), say.frontClassKit({ kits: named.join(", ") }));
    seats.set(seat.seat, seat);
  }
  const messages = [...books.messages, ...read.messages, ...clashes];
  if (messages.length > 0) throw new KitError(messages.toSorted((a, b) => (a.line ?? 0) - (b.line ?? 0)));
  return seats;
}

function placed(file: string, row: BookRow, field: string): Pick<KitMessage, "file" | "line" | "column" | "field"> {
  const place = row.placeOf([field]);
  return { file, ...place, field: row.cellOf(place.column) };
}

function readRow(file: string, row: BookRow): SeatMatter {
  const parsed = bookRow.safeParse(row.value);
  if (parsed.success) return parsed.data;
  const schema = classJsonSchema().properties!["seats"]!.items!;
  const found = schemaMessages({ file, yaml: row, schema, whole: say.checkFieldBooks() }, parsed.error.issues);
  const isName = typeof row.value["seat"] === "string" && /\p{L}{2}/u.test(row.value["seat"]);
  throw new KitError(
    found.map((message) => ({
      ...message,
      ...(isName && message.field === "seat" ? personAdvice(message.given) : {}),
      field: row.cellOf(message.column!),
    })),
  );
}
