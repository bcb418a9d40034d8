import { pressPlace } from "../../core/bench/press-place.ts";
import type { CornerPattern } from "../../core/pattern/corner-pattern.ts";
import { cornerEdge } from "../../output/drawing/bench/corner-edge.ts";
import { cornerFront } from "../../output/drawing/corner/corner-front.ts";
import { cornerCard, cornerHeard, cornerLeafOf, cornerMarkHeard, cornerMarks } from "../../output/views/corner-card.ts";
import { smallFront } from "../../output/views/corner-packet.ts";
import { cornerStepFigure, cornerStepText } from "../../output/views/corner-steps.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import type { BenchFace } from "./bench-face.ts";

/** What the bench shows where corners are folded. */
export const CORNER_FACE: BenchFace<CornerPattern> = {
  leaf: (plan, leaf, style) => {
    const card = cornerCard(plan, leaf, style);
    return {
      ...card,
      folds: [],
      lines: card.folds.map((words, i) => ({ number: i + 1, tone: undefined, words })),
    };
  },
  edge: (plan, leaf, style, space) => {
    const { source, spoken } = cornerCard(plan, leaf, style);
    return cornerEdge({ leaf: source, spoken }, plan.pattern, style, space);
  },
  marks: (plan, leaf) => cornerMarks(cornerLeafOf(plan, leaf)),
  heard: cornerHeard,
  markHeard: cornerMarkHeard,
  stepText: cornerStepText,
  stepFigure: (id, { kit, pattern }) => Promise.resolve(cornerStepFigure(id, kit, pattern)?.svg ?? ""),
  front: smallFront,
  picture: cornerFront,
  pressed: (pattern, leaves, { units }) => {
    const place = pressPlace(pattern, leaves);
    if (!place) return { flaps: undefined, words: say.benchMeasureLead() };
    const { flaps, ...where } = place;
    const [at, depth] = [where.at, where.depth].map((mm) => formatSize(mm, units)) as [string, string];
    const some = flaps < leaves ? [say.benchCornerMeasureFlaps({ flaps })] : [];
    const words = [say.benchCornerMeasureLead({ leaves, at, depth }), ...some];
    return { flaps, words: words.join(" ") };
  },
  lost: {
    button: say.benchCornerLose,
    instead: () => [say.benchCornerUnfold()],
    ticks: (count) => say.benchCornerTicksGo({ count }),
    away: (leaf) => say.benchCornerFoldAway({ leaf }),
  },
};
