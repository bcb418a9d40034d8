import type { Kit } from "../../core/kit/kit.ts";
import type { Pocket } from "../../core/light/light.ts";
import { type Pattern, pictureLeaves } from "../../core/pattern/pattern.ts";
import { benchCutDepth, cutEdge } from "../../core/plan/bench.ts";
import type { Counts, Effort } from "../../core/plan/effort.ts";
import { tackList } from "../../core/plan/tack-list.ts";
import { type Dual, dual, dualDepth, dualLength, same } from "../../words/dual.ts";
import { foldSteps } from "../drawing/diagrams/fold-steps.ts";
import { holdWidth } from "../drawing/diagrams/hold-width.ts";
import { leafAndPages } from "../drawing/diagrams/leaf-and-pages.ts";
import { measureBook } from "../drawing/diagrams/measure-book.ts";
import { scoring } from "../drawing/diagrams/scoring.ts";
import { tucking } from "../drawing/diagrams/tucking.ts";
import type { Figure } from "../drawing/figure.ts";
import { pocketPlan } from "../drawing/pocket-figure.ts";
import { hoursText } from "./figures.ts";
import { leafAndPage } from "./row.ts";
import { windowSteps } from "./window-steps.ts";

/** One step of the work, with the figures of this kit in it. */
export interface Step {
  /** The part of the work that it belongs to. */
  readonly section: string;
  readonly title: string;
  readonly text: Dual;
  /** The step in a sentence that holds for every book, for a class's handout. */
  readonly gist: string;
  /** The stage that a teacher may have ready, so that nothing is left to do here. */
  readonly ready: "scores" | "parts" | undefined;
  /** Estimated time, or empty. */
  readonly time: string;
  readonly parts: readonly string[];
  readonly tools: readonly string[];
  readonly figure: Figure | undefined;
  /** Ids of the cautions that belong to it. */
  readonly cautions: readonly string[];
}

/** The work from the closed book to the shelf, in an order in which glue can dry. */
export function stepsOf(kit: Kit, pattern: Pattern, counts: Counts, effort: Effort): Step[] {
  return [
    ...inSection("The book", foldingSteps(kit, pattern, counts, effort)),
    ...inSection("Light and window", windowSteps(kit, pattern, effort)),
  ];
}

function inSection(section: string, steps: readonly Step[]): Step[] {
  return steps.map((one) => ({ ...one, section }));
}

function foldingSteps(kit: Kit, pattern: Pattern, counts: Counts, effort: Effort): Step[] {
  const { byStage } = effort;
  const knife = counts.cuts > 0 ? ["craft knife", "mat"] : [];
  const notching: Step[] = pattern.pocket
    ? [
        step("In each batch: notch for the light", notchText(kit, pattern.pocket), {
          gist: "Once the batch is tucked, cut each notch in several light strokes, one leaf at a time.",
          time: hoursText(byStage.notch),
          tools: ["craft knife", "mat", "ruler"],
          figure: pocketPlan(pattern, pattern.pocket, kit.units),
          cautions: ["blade"],
        }),
      ]
    : [];
  return [
    step("Check the book", checkText(pattern), {
      gist: "Measure height, width and thickness, and count leaves, not pages.",
      tools: ["ruler"],
      figure: measureBook(kit),
      cautions: ["who"],
    }),
    step("Find pattern page 1", findText(pattern), {
      gist: "Put a slip of paper at the first and at the last picture leaf.",
      figure: leafAndPages(kit, pattern),
    }),
    step("Set up the gauge", gaugeText(kit), {
      gist: "Glue it to card, cut it out, and pack up the lower side of the book so that it lies level.",
      parts: ["gauge"],
      tools: ["craft knife", "packing"],
      figure: scoring(kit, pattern),
      cautions: ["blade"],
    }),
    step(
      "Press the score lines",
      same(
        `Press ${counts.scores} lines with a blunt tool, following the scoring plan. Press only as hard as creases the paper, never through it: try it on a spare leaf first. Scoring every line on every leaf takes more strokes but needs no looking up.`,
      ),
      {
        ready: "scores",
        gist: "Crease the paper with a blunt tool along the gauge's lines; never press through it.",
        time: hoursText(byStage.score),
        tools: ["bone folder", "gauge"],
      },
    ),
    step("Fold the border leaves", borderText(kit, pattern), {
      gist: "Fold whole leaves at the background line, before the picture and after it.",
      tools: ["bone folder"],
    }),
    step("Mark, cut and fold, batch by batch", foldText(kit, pattern), {
      gist: "A card under the leaf; mark from the head, cut square in, fold each span at its line, tuck it behind, tick the row.",
      time: hoursText(byStage.turn + byStage.mark + byStage.cut + byStage.fold + byStage.check),
      tools: ["ruler or strips", "pencil", ...knife, "bone folder"],
      figure: foldSteps(kit, pattern),
      cautions: counts.cuts > 0 ? ["blade", "bench"] : ["bench"],
    }),
    ...notching,
    step("In each batch: tack loose flaps", tackText(pattern), {
      gist: "Put a dot of glue under each flap in the tack list, press, let it dry.",
      time: counts.tacks > 0 ? hoursText(byStage.tack) : "",
      tools: counts.tacks > 0 ? ["glue dots"] : [],
      figure: tucking(kit, pattern),
      cautions: counts.tacks > 0 ? ["glue"] : [],
    }),
    step("Open to the hold width", holdText(pattern), {
      gist: "Measure straight across at the head edge; there the picture has its true shape.",
      parts: pattern.insert ? ["holder"] : [],
      tools: ["ruler"],
      figure: holdWidth(kit, pattern),
      cautions: pattern.insert ? [] : ["flame"],
    }),
  ];
}

/** Makes a step; what is not stated is empty. */
export function step(title: string, text: Dual, rest: Partial<Omit<Step, "section" | "title" | "text">>): Step {
  return {
    section: "",
    title,
    text,
    gist: "",
    ready: undefined,
    time: "",
    parts: [],
    tools: [],
    figure: undefined,
    cautions: [],
    ...rest,
  };
}

function notchText(kit: Kit, pocket: Pocket): Dual {
  const length = (mm: number): Dual => dualLength(mm, kit.fit.markStep);
  return dual(
    (units) =>
      `${pocket.notches.length} leaves are notched so that the light stands inside, from leaf ${pocket.notches[0]?.leaf ?? 0} to leaf ${pocket.notches.at(-1)?.leaf ?? 0}. Mark each notch with the leaf's other marks; once the batch is folded and tucked, cut them one leaf at a time, a card under the leaf, in several light strokes through body and flap, ${length(pocket.floor)[units]} from the head being the pocket's floor.`,
  );
}

function checkText(pattern: Pattern): Dual {
  const { book } = pattern;
  return dual(
    (units) =>
      `Count leaves, not pages: a leaf is one sheet with two pages. This pattern is for ${book.leaves} leaves, ${dualDepth(book.leafHeight)[units]} high and ${dualDepth(book.leafWidth)[units]} wide, pressed ${dualDepth(book.blockThickness)[units]} thick. Another book needs the pattern computed for it.`,
  );
}

function findText(pattern: Pattern): Dual {
  const leaves = pictureLeaves(pattern);
  return same(
    `The picture begins on ${leafAndPage(leaves[0]!)} (pattern page 1) and ends on ${leafAndPage(leaves.at(-1)!)} (pattern page ${leaves.at(-1)!.patternPage}). Put a slip of paper at each.`,
  );
}

function gaugeText(kit: Kit): Dual {
  const lines = kit.levels.map((level, i) =>
    dual(
      (units) =>
        `${i + 1} ${level.name}: ${level.line === undefined ? "" : `line ${level.line}, `}${dualDepth(level.depth)[units]}`,
    ),
  );
  return dual(
    (units) =>
      `Cut the gauge from the packet, or mark a strip of card with the levels that the table counts by: ${lines.map((line) => line[units]).join("; ")}. Distances are from the fore-edge. Pack up the sinking side as the support table says, so that the gauge lies level.`,
  );
}

function borderText(kit: Kit, pattern: Pattern): Dual {
  const [before, after] = kit.fit.borderLeaves;
  const level = pattern.levels[pattern.background - 1]!;
  if (before + after === 0) return same("This kit has no border leaves.");
  return dual(
    (units) =>
      `Fold ${before} whole leaves before the picture and ${after} after it at the ${level.name} line, ${dualDepth(level.depth)[units]} from the fore-edge.`,
  );
}

function foldText(kit: Kit, pattern: Pattern): Dual {
  const front = pattern.levels[0]!;
  const first =
    pattern.fit.foldStyle === "stepped"
      ? dual(
          (units) =>
            `Fold the whole leaf at the ${front.name} line, ${dualDepth(front.depth)[units]}, first (a leaf of one level is folded at its own line instead). `,
        )
      : same("");
  const deepest = benchCutDepth(pattern, pattern.levels.at(-1)!.depth);
  return dual(
    (units) =>
      `Work at most ${kit.fit.batch} leaves at a time. ${first[units]}Mark from the head edge. Slide a card or a thin mat under this one leaf, so that the leaves below stay whole, and cut square in from the ${cutEdge(pattern)} (never deeper than ${dualDepth(deepest)[units]}), fold each span ${pattern.fit.foldStyle === "stepped" ? "behind the front level once more " : ""}at its level's line and tuck it behind. Tick the row, and at each checkpoint compare the page number and the first mark before you turn on.`,
  );
}

function tackText(pattern: Pattern): Dual {
  const { glued } = tackList(pattern);
  if (glued.length === 0) return same("Every flap of this kit is held by the next leaf: nothing to glue.");
  return same(
    `${glued.length} flaps are not held by the next leaf. Put a dot of glue under each one in the tack list, press, and let it dry before the next batch.`,
  );
}

function holdText(pattern: Pattern): Dual {
  return dual(
    (units) =>
      `Stand the book up, head up, and open it until the folded edges of the first and last picture leaf are ${dualDepth(pattern.fit.edgeWidth)[units]} apart at the head edge, measured straight across; the boards' edges are then about ${dualDepth(pattern.fit.boardWidth)[units]} apart. At this width the picture has its true shape. ${pattern.insert ? "Set the holder on the head edge, its slots over the first and last picture leaf, and leave it there until all glue is dry." : "Prop it there overnight."}`,
  );
}
