import { listText } from "./lists.ts";
import * as say from "./messages.ts";

/** `seat 3`, `seats 1, 3 and 4`. */
export function seatsText(numbers: readonly number[]): string {
  return say.seatNumbers({ count: numbers.length, numbers: listText(numbers.map(String)) });
}
