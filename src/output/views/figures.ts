import type { Kit } from "../../core/kit/kit.ts";
import { type PatternBase, pictureLeaves } from "../../core/pattern/pattern.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import { dryingOf } from "../../core/steps/work.ts";
import type { WorkStep } from "../../core/steps/work-step.ts";
import { toDegrees } from "../../core/units/angle.ts";
import { hoursText, timeText } from "../../words/hours.ts";
import { formatByHand, formatDepth } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";

/** A figure with its name, as text. */
export interface Fact {
  readonly label: string;
  readonly value: string;
  /** What it means or how it is measured, in a few words. */
  readonly note: string;
}

export interface KitFigures {
  /** The few that a maker compares kits by. */
  readonly key: readonly Fact[];
  readonly hours: string;
  readonly opening: string;
}

export function figuresOf(
  kit: Kit,
  pattern: PatternBase,
  { counts, effort, work }: { readonly counts: Counts; readonly effort: Effort; readonly work: readonly WorkStep[] },
): KitFigures {
  const hours = hoursText(effort.minutes);
  return {
    key: keyFacts(pattern, kit, {
      counts,
      hours,
      timeNote: timeNote(hoursText(effort.minutes * kit.rates.first), work),
    }),
    hours,
    opening: say.unitDegree({ degrees: Math.round(toDegrees(pattern.fit.opening)) }),
  };
}

function keyFacts(
  pattern: PatternBase,
  { units: unit, fit: { foldStyle, corner } }: Kit,
  { counts, hours, timeNote }: { readonly counts: Counts; readonly hours: string; readonly timeNote: string },
): Fact[] {
  const { width, height, holdWidth } = pattern.fit;
  const pictured = pictureLeaves(pattern).length;
  const folded = foldStyle === "corner";
  const size = say.figureSides({ width: formatDepth(width, unit), height: formatDepth(height, unit), unit });
  return [
    { label: say.figurePicture(), value: size, note: folded ? say.cornerFigurePictureNote() : say.figurePictureNote() },
    {
      label: say.figureLevels(),
      value: String(folded ? corner.levels.length : pattern.levels.length),
      note: folded ? say.cornerFigureLevelsNote() : say.figureLevelsNote(),
    },
    {
      label: say.figurePictureLeaves(),
      value: String(pictured),
      note: say.figurePictureLeavesNote({ count: counts.leaves - pictured }),
    },
    folded
      ? { label: say.figureFolds(), value: String(counts.folds), note: say.figureFoldsNote(counts) }
      : { label: say.figureCuts(), value: String(counts.cuts), note: say.figureCutsNote(counts) },
    {
      label: say.figureHoldWidth(),
      value: formatByHand(holdWidth, unit),
      note: folded ? say.cornerFigureHoldNote() : say.figureHoldWidthNote(),
    },
    { label: say.figureTime(), value: hours, note: timeNote },
  ];
}

/** How long a first piece takes, and how long glue dries beside the work. */
function timeNote(first: string, work: readonly WorkStep[]): string {
  const all = dryingOf(work);
  if (all === 0) return say.figureTimeNote({ first });
  const { dries, times } = work.find((step) => step.dries > 0)!;
  return say.figureTimeNoteDrying({ first, all: timeText(all), times, each: timeText(dries) });
}
