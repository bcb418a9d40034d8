import type { Kit } from "../../core/kit/kit.ts";
import { depthsOf, type Pattern, pictureLeaves } from "../../core/pattern/pattern.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import { dryingOf } from "../../core/steps/work.ts";
import type { WorkStep } from "../../core/steps/work-step.ts";
import { toDegrees } from "../../core/units/angle.ts";
import { type Dual, dual, dualByHand, dualDepth, same } from "../../words/dual.ts";
import { hoursText, timeText } from "../../words/hours.ts";
import { formatDepth } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";

/** A figure with its name; plain text or in both unit systems. */
export interface Fact {
  readonly label: string;
  readonly value: Dual;
  /** What it means or how it is measured, in a few words. */
  readonly note: string;
}

/** A level as it stands in the list above the table. */
export interface LevelFact {
  readonly number: number;
  readonly name: string;
  readonly depth: Dual;
  readonly line: number | undefined;
  readonly background: boolean;
}

export interface KitFigures {
  /** The few that a maker compares kits by. */
  readonly key: readonly Fact[];
  /** What a book needs to carry this kit as it is published. */
  readonly book: readonly Fact[];
  readonly levels: readonly LevelFact[];
  readonly hours: string;
  readonly opening: string;
}

export function figuresOf(
  kit: Kit,
  pattern: Pattern,
  { counts, effort, work }: { readonly counts: Counts; readonly effort: Effort; readonly work: readonly WorkStep[] },
): KitFigures {
  const hours = hoursText(effort.minutes);
  return {
    key: keyFacts(pattern, counts, hours, timeNote(hoursText(effort.minutes * kit.rates.first), work)),
    book: bookFacts(kit, pattern),
    levels: pattern.levels.map((level, i) => ({
      number: i + 1,
      name: level.name,
      depth: dualDepth(level.depth),
      line: level.line,
      background: level.background,
    })),
    hours,
    opening: say.unitDegree({ degrees: Math.round(toDegrees(pattern.fit.opening)) }),
  };
}

function keyFacts(pattern: Pattern, counts: Counts, hours: string, timeNote: string): Fact[] {
  const { width, height, holdWidth } = pattern.fit;
  const pictured = pictureLeaves(pattern).length;
  const size = dual((unit) =>
    say.figureSides({ width: formatDepth(width, unit), height: formatDepth(height, unit), unit }),
  );
  return [
    { label: say.figurePicture(), value: size, note: say.figurePictureNote() },
    { label: say.figureLevels(), value: same(String(pattern.levels.length)), note: say.figureLevelsNote() },
    {
      label: say.figurePictureLeaves(),
      value: same(String(pictured)),
      note: say.figurePictureLeavesNote({ count: counts.leaves - pictured }),
    },
    { label: say.figureCuts(), value: same(String(counts.cuts)), note: say.figureCutsNote(counts) },
    { label: say.figureHoldWidth(), value: dualByHand(holdWidth), note: say.figureHoldWidthNote() },
    { label: say.figureTime(), value: same(hours), note: timeNote },
  ];
}

/** How long a first piece takes, and how long glue dries beside the work. */
function timeNote(first: string, work: readonly WorkStep[]): string {
  const all = dryingOf(work);
  if (all === 0) return say.figureTimeNote({ first });
  const { dries, times } = work.find((step) => step.dries > 0)!;
  return say.figureTimeNoteDrying({ first, all: timeText(all), times, each: timeText(dries) });
}

function bookFacts(kit: Kit, pattern: Pattern): Fact[] {
  const { book, fit } = pattern;
  const [before, after] = kit.fit.borderLeaves;
  const picture = fit.lastLeaf - fit.firstLeaf + 1;
  const inUnits = (mm: number): string => dualDepth(mm)[kit.units];
  return [
    {
      label: say.figureLeaves(),
      value: same(String(book.leaves)),
      note: say.figureLeavesNote({ before, picture, after, needed: fit.lastLeaf + after }),
    },
    {
      label: say.figureHeight(),
      value: dual((units) => say.figureHeightLeast({ height: dualDepth(fit.head + fit.height)[units] })),
      note: say.figureHeightNote({ height: inUnits(book.leafHeight) }),
    },
    {
      label: say.figureWidth(),
      value: dualDepth(book.leafWidth),
      note: say.figureWidthNote({ width: inUnits(flapReach(pattern) + kit.fit.gutterClearance) }),
    },
    { label: say.figureThickness(), value: dualDepth(book.blockThickness), note: say.figureThicknessNote() },
  ];
}

/** How far a flap that lies behind its leaf reaches from the fore-edge, mm. */
function flapReach({ levels, fit }: Pattern): number {
  const front = levels[0]!.depth;
  const deepest = Math.max(...depthsOf(levels));
  return fit.foldStyle === "stepped" ? Math.max(2 * front, 2 * deepest - front) : 2 * deepest;
}
