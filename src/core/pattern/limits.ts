import { sayLength } from "../../words/lengths.ts";
import { numberLeaves } from "../book/numbering.ts";
import type { LeafRange } from "../fan/front.ts";
import { type Solution, widestOpening } from "../fit/solve.ts";
import type { Kit } from "../kit/kit.ts";
import { Problem } from "../problem.ts";
import { toDegrees } from "../units/angle.ts";
import { tidy } from "../units/length.ts";

/** The printed pages, plates and borders must find room in the book. @throws Problem */
export function checkBook(kit: Kit): void {
  const { book, fit } = kit;
  const needed = numberLeaves(book).leavesNeeded;
  if (needed > book.leaves) {
    throw new Problem("book.lastPage", {
      given: `page ${book.lastPage} of a book of ${book.leaves} leaves whose page 1 is on leaf ${book.pageOneLeaf}`,
      allowed: `${needed} leaves would be needed (a leaf is two pages)`,
      remedy: "count the leaves again, or correct lastPage, pageOneLeaf or plates",
    });
  }
  const [before, after] = fit.borderLeaves;
  const least = typeof fit.pictureLeaves === "number" ? fit.pictureLeaves : 2;
  if (before + least + after > book.leaves) {
    const most = book.leaves - before - after;
    throw new Problem(most < 2 ? "fit.borderLeaves" : "fit.pictureLeaves", {
      given: `${before} border leaves + ${least} picture leaves + ${after} border leaves = ${before + least + after}`,
      allowed: `the book has ${book.leaves} leaves`,
      remedy:
        most < 2
          ? "use narrower borders or a thicker book"
          : `use at most ${most} picture leaves, narrower borders or a thicker book`,
    });
  }
}

/**
 * A flap must not run into the gutter. Single: a flap of depth d reaches 2d inward. Stepped: the leaf is folded at the
 * front depth d₁ first, so the second flap at depth d reaches 2d − d₁. @throws Problem naming the level and the greatest depth
 */
export function checkFlaps(kit: Kit): void {
  const { leafWidth } = kit.book;
  const say = (mm: number): string => sayLength(mm, kit.units, undefined, 2);
  const clearance = kit.fit.gutterClearance;
  const front = kit.levels[0]!.depth;
  kit.levels.forEach((level, i) => {
    const second = kit.fit.foldStyle === "stepped" && i > 0;
    const reach = second ? 2 * level.depth - front : 2 * level.depth;
    if (reach + clearance <= leafWidth + 1e-9) return;
    const most = second ? (leafWidth - clearance + front) / 2 : (leafWidth - clearance) / 2;
    throw new Problem(`levels.${i}`, {
      given: `level "${level.name}" is ${say(level.depth)} deep, its flap reaches ${say(reach)} inward`,
      allowed: `leaf width ${say(leafWidth)} less ${say(clearance)} clearance at the gutter`,
      remedy: `the greatest depth possible is ${sayLength(most, kit.units, "floor")} (${kit.fit.foldStyle} folds)`,
    });
  });
}

/** Flat on the table is the widest that a picture seen from the front can be opened. @throws Problem */
export function checkOpening(kit: Kit): void {
  const { opening, view } = kit.fit;
  if (opening === "solve" || opening <= widestOpening(view) + 1e-9) return;
  const widest = Math.round(toDegrees(widestOpening(view)));
  throw new Problem("fit.opening", {
    given: `an opening of ${tidy(toDegrees(opening), 1)}°`,
    allowed: `at most ${widest}°`,
    remedy: `open the book to ${widest}° or less`,
  });
}

/** The picture must lie on the leaf. @throws Problem */
export function checkPlace(kit: Kit, solution: Solution, head: number): void {
  const { leafHeight } = kit.book;
  if (head >= 0 && head + solution.height <= leafHeight + 1e-9) return;
  const say = (mm: number): string => sayLength(mm, kit.units, undefined, 2);
  const room = leafHeight - Math.max(0, kit.fit.head ?? 0);
  throw new Problem(kit.fit.height === "solve" ? "fit.head" : "fit.height", {
    given: `head ${say(Math.max(head, 0))} + height ${say(solution.height)}${kit.fit.height === "solve" ? " (solved)" : ""}`,
    allowed: `the leaf is ${say(leafHeight)} high`,
    remedy:
      kit.fit.height === "solve"
        ? `lower the opening or use fewer picture leaves until the height is at most ${sayLength(room, kit.units, "floor", 2)}, or choose a taller book`
        : `lower the height to at most ${sayLength(room, kit.units, "floor", 2)}${kit.fit.head ? " or the head" : ""}, or choose a taller book`,
  });
}

/** Lost leaves must be picture leaves, and two must remain after them. @throws Problem */
export function checkLostLeaves(kit: Kit, range: LeafRange): void {
  const first = range.first + 1;
  const last = range.first + range.count;
  for (const leaf of kit.fit.lostLeaves) {
    if (leaf >= first && leaf <= last) continue;
    throw new Problem("fit.lostLeaves", {
      given: `leaf ${leaf}`,
      allowed: `picture leaves are ${first} to ${last}`,
      remedy: "a lost border leaf changes nothing in the picture: leave it out of the list",
    });
  }
  const remaining = range.count - new Set(kit.fit.lostLeaves).size;
  if (remaining < 2) {
    throw new Problem("fit.lostLeaves", {
      given: `${range.count - remaining} of ${range.count} picture leaves`,
      allowed: "two picture leaves remain",
      remedy: "begin again with another book",
    });
  }
}
