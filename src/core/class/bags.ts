import { type SeatPart, seatsOfPart } from "./class-sheets.ts";
import type { NamedSheet } from "./preparation.ts";

/** A part in a seat's bag, and the cut sheets that it comes from. */
export interface BaggedPart {
  readonly part: SeatPart;
  /** Names of the merged cut sheets; none where no sheet is large enough. */
  readonly sheets: readonly string[];
}

/** What lies in a seat's bag; a gauge that goes round lies in the first of its seats' bags. */
export interface Bag {
  readonly seat: number;
  readonly parts: readonly BaggedPart[];
  /** The seat whose bag holds the gauge, where it is another. */
  readonly gaugeWith: number | undefined;
}

/** Each seat's bag, in the order of the seats. */
export function bagsOf(parts: readonly SeatPart[], sheets: readonly NamedSheet[]): Bag[] {
  const seats = [...new Set(parts.flatMap(seatsOfPart))].sort((a, b) => a - b);
  return seats.map((seat) => {
    const shared = parts.find((part) => part.seat !== seat && seatsOfPart(part).includes(seat));
    return {
      seat,
      parts: parts
        .filter((part) => part.seat === seat)
        .map((part) => ({
          part,
          sheets: sheets.filter(({ sheet }) => sheet.parts.includes(part)).map(({ name }) => name),
        })),
      gaugeWith: shared?.seat,
    };
  });
}
