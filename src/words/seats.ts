import type { SeatPart } from "../core/class/class-sheets.ts";
import { listText, rowText } from "./lists.ts";
import * as say from "./messages.ts";
import { partName } from "./parts.ts";

/** `seat 3`, `seats 1, 3 and 4`. */
export function seatsText(numbers: readonly number[]): string {
  return say.seatNumbers({ count: numbers.length, numbers: listText(numbers.map(String)) });
}

/** Parts with the seats that they are for: `seat 2: door, seat 8: door`. */
export function seatPartsText(parts: readonly SeatPart[]): string {
  return rowText(parts.map((part) => say.sheetPart({ seat: part.seat, part: partName(part) })));
}

/** Another kit that a seat's book carries, as it is or with a change, in a sentence. */
export function otherKitText({
  title,
  change,
}: {
  readonly title: string;
  readonly change: string | undefined;
}): string {
  return change === undefined ? say.seatOtherFits({ kit: title }) : say.seatOtherChange({ kit: title, offer: change });
}
