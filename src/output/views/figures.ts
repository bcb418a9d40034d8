import type { Kit } from "../../core/kit/kit.ts";
import { depthsOf, type Pattern, pictureLeaves } from "../../core/pattern/pattern.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import { toDegrees } from "../../core/units/angle.ts";
import { type Dual, dual, dualDepth } from "../../words/dual.ts";
import { formatDepth } from "../../words/lengths.ts";

/** A figure with its name; plain text or in both unit systems. */
export interface Figure {
  readonly label: string;
  readonly value: Dual;
  /** What it means or how it is measured, in a few words. */
  readonly note: string;
}

export interface KitFigures {
  /** The few that a maker compares kits by. */
  readonly key: readonly Figure[];
  /** What a book needs to carry this kit as it is published. */
  readonly book: readonly Figure[];
  readonly levels: readonly {
    readonly number: number;
    readonly name: string;
    readonly depth: Dual;
    readonly line: number | undefined;
    readonly background: boolean;
  }[];
  readonly hours: string;
  readonly holdWidth: Dual;
  readonly boardWidth: Dual;
  readonly opening: string;
  readonly restingOpening: string;
}

export function figuresOf(kit: Kit, pattern: Pattern, counts: Counts, effort: Effort): KitFigures {
  const { fit } = pattern;
  const hours = hoursText(effort.minutes);
  return {
    key: [
      figure(
        "Picture",
        dual((units) => `${formatDepth(fit.width, units)} × ${formatDepth(fit.height, units)}\u00a0${units}`),
        "width × height on the front level",
      ),
      figure("Levels", plain(String(pattern.levels.length)), "depths, front to back"),
      figure(
        "Picture leaves",
        plain(String(pictureLeaves(pattern).length)),
        `and ${counts.leaves - pictureLeaves(pattern).length} border leaves`,
      ),
      figure("Cuts", plain(String(counts.cuts)), `${counts.folds} folds, ${counts.scores} score lines`),
      figure("Hold width", dualDepth(fit.edgeWidth), "folded edges of the first and last picture leaf, at the head"),
      figure("Time", plain(hours), "an estimate from the counts"),
    ],
    book: bookFigures(kit, pattern),
    levels: pattern.levels.map((level, i) => ({
      number: i + 1,
      name: level.name,
      depth: dualDepth(level.depth),
      line: level.line,
      background: level.background,
    })),
    hours,
    holdWidth: dualDepth(fit.edgeWidth),
    boardWidth: dualDepth(fit.boardWidth),
    opening: `${toDegrees(fit.opening).toFixed(0)}°`,
    restingOpening: `${toDegrees(fit.restingOpening).toFixed(0)}°`,
  };
}

function bookFigures(kit: Kit, pattern: Pattern): Figure[] {
  const { book, fit } = pattern;
  const [before, after] = kit.fit.borderLeaves;
  const deepest = Math.max(...depthsOf(pattern.levels));
  const front = pattern.levels[0]!.depth;
  const reach = fit.foldStyle === "stepped" ? Math.max(2 * front, 2 * deepest - front) : 2 * deepest;
  const needed = fit.lastLeaf + after;
  return [
    figure(
      "Leaves",
      plain(String(book.leaves)),
      `${before} border + ${fit.lastLeaf - fit.firstLeaf + 1} picture + ${after} border; of them ${needed} are folded`,
    ),
    figure(
      "Leaf height",
      dual((units) => `at least ${dualDepth(fit.head + fit.height)[units]}`),
      `head to tail; this book: ${dualDepth(book.leafHeight)[kit.units]}`,
    ),
    figure(
      "Leaf width",
      dualDepth(book.leafWidth),
      `fore-edge to gutter; flaps need ${dualDepth(reach + kit.fit.gutterClearance)[kit.units]} of it`,
    ),
    figure("Thickness", dualDepth(book.blockThickness), "all leaves pressed, without the boards"),
  ];
}

/** `2 h 45 min`, to the quarter hour. */
export function hoursText(minutes: number): string {
  const quarters = Math.max(1, Math.round(minutes / 15));
  const hours = Math.floor(quarters / 4);
  const rest = (quarters % 4) * 15;
  return [hours > 0 ? `${hours} h` : "", rest > 0 ? `${rest} min` : ""].filter(Boolean).join(" ");
}

function figure(label: string, value: Dual, note: string): Figure {
  return { label, value, note };
}

function plain(text: string): Dual {
  return { mm: text, in: text };
}
