import type { Refit } from "../core/refit/refit.ts";
import type { UnitSystem } from "../core/units/length.ts";
import { formatDepth, formatSize } from "./lengths.ts";
import { rowText } from "./lists.ts";
import * as say from "./messages.ts";

/** What is stated of a book in a line, as of `bookText`; empty where nothing is. */
export function statedBook(book: Refit, units: UnitSystem): string {
  const { leafHeight, leafWidth, blockThickness, leaves } = book;
  return rowText([
    ...(leafHeight !== undefined && leafWidth !== undefined
      ? [say.classBookSides({ height: formatDepth(leafHeight, units), width: formatSize(leafWidth, units) })]
      : []),
    ...(leaves === undefined ? [] : [say.classBookLeaves({ leaves })]),
    ...(blockThickness === undefined ? [] : [say.classBookThick({ thickness: formatSize(blockThickness, units) })]),
  ]);
}

/** A whole book in a line: `178 × 110 mm, 96 leaves, 9.5 mm thick`, and what is unusual. */
export function bookText(book: Refit, units: UnitSystem): string {
  const plates = (book.plates ?? []).reduce((sum, plate) => sum + plate.leaves, 0);
  return rowText([
    statedBook(book, units),
    ...(book.direction === "rtl" ? [say.classBookRightToLeft()] : []),
    ...(plates > 0 ? [say.classBookPlates({ plates })] : []),
  ]);
}
