import type { Pattern } from "../../core/pattern/pattern.ts";
import { leafEdge } from "../../output/drawing/bench/leaf-edge.ts";
import { levelTone } from "../../output/drawing/bench/level-tone.ts";
import { bookPicture } from "../../output/drawing/front/book-picture.ts";
import { cutStepText } from "../../output/views/item-card.ts";
import { leafCard } from "../../output/views/leaf-card.ts";
import { leafHeard, markHeard } from "../../output/views/leaf-heard.ts";
import * as say from "../../words/messages.ts";
import { fetchedStep, fetchStepDrawings } from "../shared/step-drawings.ts";
import type { BenchFace } from "./bench-face.ts";

/** What the bench shows where leaves are cut. */
export const CUT_FACE: BenchFace<Pattern> = {
  leaf: (plan, leaf, style) => {
    const { row, levels, ...card } = leafCard(plan, leaf, style);
    const chip = (number: number) => ({ number, tone: levelTone(plan.pattern, number) });
    return {
      ...card,
      bookPage: row.bookPage,
      patternPage: row.patternPage,
      folds: row.folds.map(chip),
      lines: levels.map(({ number, words }) => ({ ...chip(number), words })),
    };
  },
  edge: (plan, leaf, style, space) => leafEdge(leafCard(plan, leaf, style), plan.pattern, style.units, space),
  marks: ({ pattern }, leaf) => pattern.leaves.find((one) => one.leaf === leaf)!.cuts.map(({ at }) => at),
  heard: leafHeard,
  markHeard,
  stepText: cutStepText,
  stepFigure: async (id, { kit, pattern }) => {
    await fetchStepDrawings("../../../");
    return fetchedStep(id, kit, pattern)?.svg ?? "";
  },
  front: (pattern) => pattern,
  picture: (pattern, options) => bookPicture(pattern, options),
  pressed: () => ({ flaps: undefined, words: say.benchMeasureLead() }),
  lost: {
    button: say.benchLose,
    instead: () => [],
    ticks: (count) => say.benchTicksGo({ count }),
    away: (leaf) => say.benchFoldAway({ leaf }),
  },
};
