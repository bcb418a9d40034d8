import { OF_A_BOOK, type Refit } from "../refit/refit.ts";
import { tidy } from "../units/length.ts";
import type { Seat } from "./kit-class.ts";
import { seatRow } from "./seat-row.ts";
import { wayOfSeat } from "./seat-way.ts";

/** What a teacher enters so that a seat is changed: a line below `seats:` in the class's file, or the seat's row in the books table. */
export interface SeatEntry {
  readonly into: "matter" | "table";
  readonly text: string;
}

/** A seat as it is to be: with another kit, or another match of it to the book. */
interface Wanted {
  readonly kit: string;
  readonly refit: Refit;
}

type Written = number | string | readonly number[] | readonly Readonly<Record<string, number>>[];

/** The line for a change that keeps the seat's book: one that the table has stays there. Lengths in mm. */
export function changeEntry(seat: Seat, { kit, refit }: Wanted, pace: number): SeatEntry {
  const fit = fitOf(refit);
  const was = Object.keys(fitOf(seat.refit)).length > 0;
  const light = lightOf(refit);
  const entry = {
    seat: seat.number,
    kit,
    ...(seat.bookIn === "matter" ? { book: bookOf(seat.book) } : {}),
    ...(was || Object.keys(fit).length > 0 ? { fit } : {}),
    ...(Object.keys(light).length > 0 ? { light } : {}),
    ...(seat.pace === pace ? {} : { pace: seat.pace }),
  };
  return { into: "matter", text: `- ${flow(entry)}` };
}

/** What to enter for a seat that takes a substitute book with its kit as it is. */
export function spareEntry(seat: Seat, book: Refit, pace: number): SeatEntry {
  const kit = seat.kit.slug;
  const refit = wayOfSeat(seat, seat.kit);
  if (seat.bookIn === "matter") return changeEntry({ ...seat, book, refit: {} }, { kit, refit }, pace);
  const own = seat.pace === pace ? undefined : seat.pace;
  return { into: "table", text: seatRow({ seat: seat.number, kit, pace: own, ...refit }, book) };
}

function bookOf(book: Refit): Record<string, Written> {
  return written(OF_A_BOOK.map((key) => [key, book[key]]));
}

function fitOf({ height, head, openingDegrees, pictureLeaves, borderLeaves, foldStyle, depths }: Refit) {
  return written(
    Object.entries({ height, head, opening: openingDegrees, pictureLeaves, borderLeaves, foldStyle, depths }),
  );
}

function lightOf({ lightDiameter: diameter, lightHeight: height }: Refit): Record<string, Written> {
  return written(Object.entries({ diameter, height }));
}

/** Without what is not stated, and empty lists. */
function written(entries: readonly (readonly [string, unknown])[]): Record<string, Written> {
  const stated = entries.filter(([, value]) => value !== undefined && !(Array.isArray(value) && value.length === 0));
  return Object.fromEntries(stated) as Record<string, Written>;
}

/** As YAML writes it in one line; no text in it needs quotes. */
function flow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(flow).join(", ")}]`;
  if (typeof value === "number") return String(tidy(value));
  if (typeof value !== "object" || value === null) return String(value);
  const pairs = Object.entries(value).map(([key, one]) => `${key}: ${flow(one)}`);
  return pairs.length === 0 ? "{}" : `{ ${pairs.join(", ")} }`;
}
