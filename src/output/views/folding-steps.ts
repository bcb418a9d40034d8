import type { Kit } from "../../core/kit/kit.ts";
import type { Pocket } from "../../core/light/light.ts";
import { type Pattern, pictureLeaves } from "../../core/pattern/pattern.ts";
import { benchCutDepth } from "../../core/plan/bench.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import { type Dual, dual, dualByHand, dualDepth, dualLength } from "../../words/dual.ts";
import { hoursText } from "../../words/hours.ts";
import { leafAndPage } from "../../words/leaves.ts";
import * as say from "../../words/messages.ts";
import type { Tool } from "../../words/tools.ts";
import { foldSteps } from "../drawing/diagrams/fold-steps.ts";
import { holdWidth } from "../drawing/diagrams/hold-width.ts";
import { leafAndPages } from "../drawing/diagrams/leaf-and-pages.ts";
import { measureBook } from "../drawing/diagrams/measure-book.ts";
import { scoring } from "../drawing/diagrams/scoring.ts";
import { tucking } from "../drawing/diagrams/tucking.ts";
import { pocketPlan } from "../drawing/pocket-figure.ts";
import { type Step, type StepWords, step } from "./step.ts";

/** From the closed book to the folded one that stands at its hold width. */
export function foldingSteps(kit: Kit, pattern: Pattern, counts: Counts, effort: Effort): Step[] {
  return [
    step("book", checkWords(pattern), { tools: ["ruler"], figure: measureBook(kit), cautions: ["who"] }),
    step("book", findWords(pattern), { figure: leafAndPages(kit, pattern) }),
    step("book", gaugeWords(kit), {
      parts: ["gauge"],
      tools: ["craftKnife", "packing"],
      figure: scoring(kit, pattern),
      cautions: ["blade"],
    }),
    step("book", scoreWords(counts), {
      ready: "scores",
      time: hoursText(effort.byStage.score),
      tools: ["boneFolder", "gauge"],
    }),
    step("book", borderWords(kit, pattern), { tools: ["boneFolder"] }),
    foldStep(kit, pattern, counts, effort),
    ...(pattern.pocket ? [notchStep(kit, pattern, pattern.pocket, effort)] : []),
    tackStep(kit, pattern, counts, effort),
    step("book", holdWords(pattern), {
      parts: pattern.insert ? ["holder"] : [],
      tools: ["ruler"],
      figure: holdWidth(kit, pattern),
      cautions: pattern.insert ? [] : ["flame"],
    }),
  ];
}

function foldStep(kit: Kit, pattern: Pattern, counts: Counts, { byStage }: Effort): Step {
  const knife: readonly Tool[] = counts.cuts > 0 ? ["craftKnife", "mat"] : [];
  return step("book", foldWords(kit, pattern), {
    time: hoursText(byStage.turn + byStage.mark + byStage.cut + byStage.fold + byStage.check),
    tools: ["rulerOrStrips", "pencil", ...knife, "boneFolder"],
    figure: foldSteps(kit, pattern),
    cautions: counts.cuts > 0 ? ["blade", "bench"] : ["bench"],
  });
}

function notchStep(kit: Kit, pattern: Pattern, pocket: Pocket, effort: Effort): Step {
  return step("book", notchWords(kit, pocket), {
    time: hoursText(effort.byStage.notch),
    tools: ["craftKnife", "mat", "ruler"],
    figure: pocketPlan(pattern, pocket, kit.units),
    cautions: ["blade"],
  });
}

function tackStep(kit: Kit, pattern: Pattern, { tacks }: Counts, effort: Effort): Step {
  const text = tacks === 0 ? say.stepTackNone() : say.stepTackText({ count: tacks });
  const gluing = { time: hoursText(effort.byStage.tack), tools: ["glueDots"], cautions: ["glue"] } as const;
  return step(
    "book",
    { title: say.stepTack(), text, gist: say.stepTackGist() },
    { ...(tacks > 0 ? gluing : {}), figure: tucking(kit, pattern) },
  );
}

function checkWords({ book }: Pattern): StepWords {
  const text = dual((units) => {
    const [height, width, thickness] = [book.leafHeight, book.leafWidth, book.blockThickness].map(
      (mm) => dualDepth(mm)[units],
    ) as [string, string, string];
    return say.stepCheckText({ leaves: book.leaves, height, width, thickness });
  });
  return { title: say.stepCheck(), text, gist: say.stepCheckGist() };
}

function findWords(pattern: Pattern): StepWords {
  const leaves = pictureLeaves(pattern);
  const last = leaves.at(-1)!;
  const text = say.stepFindText({
    first: leafAndPage(leaves[0]!),
    last: leafAndPage(last),
    page: last.patternPage!,
  });
  return { title: say.stepFind(), text, gist: say.stepFindGist() };
}

function gaugeWords({ levels }: Kit): StepWords {
  const text = dual((units) => {
    const lines = levels.map(({ name, line, depth: mm }, i) => {
      const told = { number: i + 1, name, depth: dualDepth(mm)[units] };
      return line === undefined ? say.stepGaugeFreeLine(told) : say.stepGaugeLine({ ...told, line });
    });
    return say.stepGaugeText({ lines: lines.join("; ") });
  });
  return { title: say.stepGauge(), text, gist: say.stepGaugeGist() };
}

function scoreWords({ scores }: Counts): StepWords {
  return { title: say.stepScore(), text: say.stepScoreText({ count: scores }), gist: say.stepScoreGist() };
}

function borderWords(kit: Kit, pattern: Pattern): StepWords {
  const [before, after] = kit.fit.borderLeaves;
  const level = pattern.levels[pattern.background - 1]!;
  const text = (depth: string): string => say.stepBorderText({ before, after, level: level.name, depth });
  return {
    title: say.stepBorder(),
    text: before + after === 0 ? say.stepBorderNone() : dual((units) => text(dualDepth(level.depth)[units])),
    gist: say.stepBorderGist(),
  };
}

function foldWords(kit: Kit, pattern: Pattern): StepWords {
  const front = pattern.levels[0]!;
  const { batch } = kit.fit;
  const cut = dualDepth(benchCutDepth(pattern, pattern.levels.at(-1)!.depth));
  const text = dual((units) => {
    const deepest = cut[units];
    return pattern.fit.foldStyle === "stepped"
      ? say.stepFoldTextStepped({ batch, front: front.name, depth: dualDepth(front.depth)[units], deepest })
      : say.stepFoldText({ batch, deepest });
  });
  return { title: say.stepFold(), text, gist: say.stepFoldGist() };
}

function notchWords(kit: Kit, { notches, floor }: Pocket): StepWords {
  const leaves = { count: notches.length, first: notches[0]?.leaf ?? 0, last: notches.at(-1)?.leaf ?? 0 };
  const place: Dual = dualLength(floor, kit.fit.markStep);
  return {
    title: say.stepNotch(),
    text: dual((units) => say.stepNotchText({ ...leaves, floor: place[units] })),
    gist: say.stepNotchGist(),
  };
}

function holdWords({ fit, insert }: Pattern): StepWords {
  const [width, boards] = [dualByHand(fit.edgeWidth), dualByHand(fit.boardWidth)];
  const holder = insert ? "yes" : "no";
  return {
    title: say.stepHold(),
    text: dual((units) => say.stepHoldText({ width: width[units], boards: boards[units], holder })),
    gist: say.stepHoldGist(),
  };
}
