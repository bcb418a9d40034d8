import type { Kit } from "../../core/kit/kit.ts";
import type { Pocket } from "../../core/light/light.ts";
import { type Pattern, pictureLeaves } from "../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../core/plan/bench.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import { type Dual, dual, dualByHand, dualLength } from "../../words/dual.ts";
import { hoursText } from "../../words/hours.ts";
import { leafAndPage } from "../../words/leaves.ts";
import { formatSize } from "../../words/lengths.ts";
import * as say from "../../words/messages.ts";
import type { Tool } from "../../words/tools.ts";
import { foldSteps } from "../drawing/diagrams/fold-steps.ts";
import { holdWidth } from "../drawing/diagrams/hold-width.ts";
import { leafAndPages } from "../drawing/diagrams/leaf-and-pages.ts";
import { measureBook } from "../drawing/diagrams/measure-book.ts";
import { scoring } from "../drawing/diagrams/scoring.ts";
import { tucking } from "../drawing/diagrams/tucking.ts";
import { pocketPlan } from "../drawing/pocket-figure.ts";
import { type Step, step } from "./step.ts";

/** From the closed book to the folded one that stands at its hold width. */
export function foldingSteps(kit: Kit, pattern: Pattern, counts: Counts, effort: Effort): Step[] {
  return [
    step("book", "check", checkText(pattern), { tools: ["ruler"], figure: measureBook(kit), cautions: ["who"] }),
    step("book", "find", findText(pattern), { figure: leafAndPages(kit, pattern) }),
    step("book", "gauge", gaugeText(kit), {
      parts: ["gauge"],
      tools: ["craftKnife", "packing"],
      figure: scoring(kit, pattern),
      cautions: ["blade"],
    }),
    step("book", "score", say.stepScoreText({ count: counts.scores }), {
      ready: "scores",
      time: hoursText(effort.byStage.score),
      tools: ["boneFolder", "gauge"],
    }),
    step("book", "border", borderText(kit, pattern), { tools: ["boneFolder"] }),
    foldStep(kit, pattern, counts, effort),
    ...(pattern.pocket ? [notchStep(kit, pattern, pattern.pocket, effort)] : []),
    tackStep(kit, pattern, counts, effort),
    step("book", "hold", holdText(pattern), {
      parts: pattern.window ? [pattern.window.holder] : [],
      tools: ["ruler"],
      figure: holdWidth(kit, pattern),
      cautions: pattern.window ? [] : ["flame"],
    }),
  ];
}

function foldStep(kit: Kit, pattern: Pattern, counts: Counts, { byStage }: Effort): Step {
  const knife: readonly Tool[] = counts.cuts > 0 ? ["craftKnife", "mat"] : [];
  return step("book", "fold", foldText(kit, pattern), {
    time: hoursText(byStage.turn + byStage.mark + byStage.cut + byStage.fold + byStage.check),
    tools: ["rulerOrStrips", "pencil", ...knife, "boneFolder"],
    figure: foldSteps(kit, pattern),
    cautions: counts.cuts > 0 ? ["blade", "bench"] : ["bench"],
  });
}

function notchStep(kit: Kit, pattern: Pattern, pocket: Pocket, effort: Effort): Step {
  return step("book", "notch", notchText(kit, pocket), {
    time: hoursText(effort.byStage.notch),
    tools: ["craftKnife", "mat", "ruler"],
    figure: pocketPlan(pattern, pocket, kit.units),
    cautions: ["blade"],
  });
}

function tackStep(kit: Kit, pattern: Pattern, { tacks }: Counts, effort: Effort): Step {
  const text = tacks === 0 ? say.kitTacksNone() : say.stepTackText({ count: tacks });
  const gluing = { time: hoursText(effort.byStage.tack), tools: ["glueDots"], cautions: ["glue"] } as const;
  return step("book", "tack", text, { ...(tacks > 0 ? gluing : {}), figure: tucking(kit, pattern) });
}

function checkText({ book }: Pattern): Dual {
  const { leaves, leafHeight, leafWidth, blockThickness } = book;
  return dual((units) =>
    say.stepCheckText({
      leaves,
      height: formatSize(leafHeight, units),
      width: formatSize(leafWidth, units),
      thickness: formatSize(blockThickness, units),
    }),
  );
}

function findText(pattern: Pattern): string {
  const leaves = pictureLeaves(pattern);
  const last = leaves.at(-1)!;
  return say.stepFindText({ first: leafAndPage(leaves[0]!), last: leafAndPage(last), page: last.patternPage! });
}

function gaugeText({ levels }: Kit): Dual {
  return dual((units) => {
    const lines = levels.map(({ name, line, depth: mm }, i) => {
      const told = { number: i + 1, name, depth: formatSize(mm, units) };
      return line === undefined ? say.stepGaugeFreeLine(told) : say.stepGaugeLine({ ...told, line });
    });
    return say.stepGaugeText({ lines: lines.join("; ") });
  });
}

function borderText(kit: Kit, pattern: Pattern): Dual | string {
  const [before, after] = kit.fit.borderLeaves;
  if (before + after === 0) return say.stepBorderNone();
  const { name: level, depth } = pattern.levels[pattern.background - 1]!;
  return dual((units) => say.stepBorderText({ before, after, level, depth: formatSize(depth, units) }));
}

function foldText(kit: Kit, pattern: Pattern): Dual {
  const front = pattern.levels[0]!;
  const { batch } = kit.fit;
  const cut = benchCutDepth(pattern, pattern.levels.at(-1)!.depth);
  return dual((units) => {
    const deepest = formatSize(cut, units);
    return pattern.fit.foldStyle === "stepped"
      ? say.stepFoldTextStepped({ batch, front: front.name, depth: formatSize(front.depth, units), deepest })
      : say.stepFoldText({ batch, deepest });
  });
}

function notchText(kit: Kit, { notches, floor }: Pocket): Dual {
  const leaves = { count: notches.length, first: notches[0]?.leaf ?? 0, last: notches.at(-1)?.leaf ?? 0 };
  const place = dualLength(floor, kit.fit.markStep);
  return dual((units) => say.stepNotchText({ ...leaves, floor: place[units] }));
}

function holdText({ fit, window }: Pattern): Dual {
  const [width, boards] = [dualByHand(fit.holdWidth), dualByHand(fit.boardWidth)];
  const holder = window ? "yes" : "no";
  return dual((units) => say.stepHoldText({ width: width[units], boards: boards[units], holder }));
}
