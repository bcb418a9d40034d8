import { type SeatPart, seatsOfPart } from "../core/class/class-sheets.ts";
import { listText, rowText } from "./lists.ts";
import * as say from "./messages.ts";
import { partName } from "./parts.ts";

/** `seat 3`, `seats 1, 3 and 4`. */
export function seatsText(numbers: readonly number[]): string {
  return say.seatNumbers({ count: numbers.length, numbers: listText(numbers.map(String)) });
}

/** Parts with the seats that they are for: `seat 2: door, seat 8: door`. */
export function seatPartsText(parts: readonly SeatPart[]): string {
  return rowText(parts.map((part) => say.sheetPart({ seats: seatsText(seatsOfPart(part)), part: partName(part) })));
}

/** More seats than these are counted on a part. */
const MOST_NAMED = 4;

/** What stands on a part, the longest first: `2 door`, then the seat alone; a gauge that goes round names its seats, or how many. */
export function seatPartNames(part: SeatPart): [string, string] {
  const all = seatsOfPart(part);
  const seats =
    all.length > MOST_NAMED ? say.sheetSeatsMany({ first: all[0]!, more: all.length - 1 }) : rowText(all.map(String));
  return [say.sheetPartShort({ seats, part: partName(part) }), seats];
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
