import type { Refit } from "../core/refit/refit.ts";
import type { UnitSystem } from "../core/units/length.ts";
import { formatDepth, formatSize } from "./lengths.ts";
import { rowText } from "./lists.ts";
import * as say from "./messages.ts";

/** A whole book in a line: `178 × 110 mm, 96 leaves, 9.5 mm thick`, and what is unusual. */
export function bookText(book: Refit, units: UnitSystem): string {
  const plates = (book.plates ?? []).reduce((sum, plate) => sum + plate.leaves, 0);
  return rowText([
    say.classBookSides({ height: formatDepth(book.leafHeight!, units), width: formatSize(book.leafWidth!, units) }),
    say.classBookLeaves({ leaves: book.leaves! }),
    say.classBookThick({ thickness: formatSize(book.blockThickness!, units) }),
    ...(book.direction === "rtl" ? [say.classBookRightToLeft()] : []),
    ...(plates > 0 ? [say.classBookPlates({ plates })] : []),
  ]);
}
