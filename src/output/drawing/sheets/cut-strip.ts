import type { Notch } from "../../../core/light/light.ts";
import { notchMarks } from "../../../core/light/notch-marks.ts";
import type { Pattern, PatternLeaf } from "../../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../../core/plan/bench.ts";
import type { LengthStyle } from "../../../core/units/length.ts";
import { formatDepth } from "../../../words/lengths.ts";
import * as say from "../../../words/messages.ts";
import { paperTone } from "../front/tone.ts";
import { FOLD, type LevelNumber, type StripFace, type StripNotch, type StripPart } from "./strip.ts";

/** Fields lower than this carry their level at the foot, clear of the cut depth above; the lowest carry none. */
const LOW_FIELD = 9;
const LEAST_LABELLED = 5.6;

/** The strip of a leaf that is cut: a field for each span, marks with their cuts, the notch. */
export function cutStrip(leaf: PatternLeaf, part: StripPart, pattern: Pattern, style: LengthStyle): StripFace {
  const top = FOLD - part.from;
  const notch = pattern.pocket?.notches.find((one) => one.leaf === leaf.leaf);
  const marks = notch && notchMarks(notch, style.step);
  const edges = marks ? [marks.from, marks.to] : [];
  /** Words stand below their mark, or above it where a notch's edge or the strip's foot would run through them. */
  const foot = (at: number): number =>
    at + 3 > part.to || edges.some((edge) => edge > at && edge < at + 3) ? at - 0.6 : at + 2.5;
  const spans = leaf.spans
    .filter((span) => span.to > part.from && span.from < part.to)
    .map(({ from, to, level }) => ({ level, from: top + Math.max(from, part.from), to: top + Math.min(to, part.to) }));
  return {
    fields: spans.map(({ level, from, to }) => ({ tone: stripTone(level, pattern.levels.length), from, to })),
    numbers: spans.flatMap(numberIn),
    marks: leaf.cuts
      .filter(({ at }) => at >= part.from && at <= part.to)
      .map(({ at, depth }) => ({
        words: `›${formatDepth(benchCutDepth(pattern, depth), style.units)}`,
        y: top + at,
        foot: top + foot(at),
      })),
    slants: [],
    notch: notch && notchIn(notch, part, top, style),
  };
}

/** A field's number where it has room for one. */
function numberIn({
  level,
  from,
  to,
}: {
  readonly level: number;
  readonly from: number;
  readonly to: number;
}): LevelNumber[] {
  const room = to - from;
  if (room >= LOW_FIELD) return [{ level, y: (from + to) / 2 + 1.1, size: 3.2 }];
  return room >= LEAST_LABELLED ? [{ level, y: to - 0.7, size: 2.8 }] : [];
}

/** Pale enough to read on and to spare ink; the number in the field says the level too. */
function stripTone(level: number, levels: number): string {
  return paperTone(((level - 1) / Math.max(1, levels - 1)) * 0.4, 1.01);
}

/** The notch with its depth, as far as the part shows it. */
function notchIn(notch: Notch, part: StripPart, top: number, style: LengthStyle): StripNotch | undefined {
  const marks = notchMarks(notch, style.step);
  const from = Math.max(marks.from, part.from);
  const to = Math.min(marks.to, part.to);
  const words = say.drawStripNotch({ depth: formatDepth(marks.depth, style.units) });
  return to > from ? { from: top + from, to: top + to, words } : undefined;
}
