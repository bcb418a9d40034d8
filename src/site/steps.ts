import type { Kit } from "../kit/kit.ts";
import { type Pattern, pictureLeaves } from "../pattern/pattern.ts";
import { benchCutDepth, cutEdge } from "../plan/bench.ts";
import type { Counts, Effort } from "../plan/effort.ts";
import { tackList } from "../plan/tack-list.ts";
import { type Dual, dual, dualDepth } from "./dual.ts";
import { hoursText } from "./figures.ts";
import { leafAndPage } from "./row.ts";

/** One step of the work, with the figures of this kit in it. */
export interface Step {
  readonly title: string;
  readonly text: Dual;
  /** Estimated time, or empty. */
  readonly time: string;
  /** Ids of the cautions that belong to it. */
  readonly cautions: readonly string[];
}

/** The work from the closed book to the standing fan, in order. */
export function stepsOf(kit: Kit, pattern: Pattern, counts: Counts, effort: Effort): Step[] {
  const { byStage } = effort;
  return [
    { title: "Check the book", text: checkText(pattern), time: "", cautions: ["who"] },
    { title: "Find pattern page 1", text: findText(pattern), time: "", cautions: [] },
    { title: "Set up the gauge", text: gaugeText(kit), time: "", cautions: ["blade"] },
    {
      title: "Press the score lines",
      text: same(
        `Press ${counts.scores} lines with a blunt tool, following the scoring plan. Scoring every line on every leaf takes more strokes but needs no looking up; unused lines do no harm.`,
      ),
      time: hoursText(byStage.score),
      cautions: [],
    },
    { title: "Fold the border leaves", text: borderText(kit, pattern), time: "", cautions: [] },
    {
      title: "Mark, cut and fold, batch by batch",
      text: foldText(kit, pattern),
      time: hoursText(byStage.turn + byStage.mark + byStage.cut + byStage.fold + byStage.check),
      cautions: counts.cuts > 0 ? ["blade", "bench"] : ["bench"],
    },
    {
      title: "Tack loose flaps",
      text: tackText(pattern),
      time: counts.tacks > 0 ? hoursText(byStage.tack) : "",
      cautions: counts.tacks > 0 ? ["glue"] : [],
    },
    { title: "Open to the hold width", text: holdText(pattern), time: "", cautions: ["light"] },
  ];
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
  const lines = kit.levels.map((level) =>
    dual(
      (units) =>
        `${level.line === undefined ? "" : `line ${level.line}, `}${dualDepth(level.depth)[units]} for ${level.name}`,
    ),
  );
  return dual(
    (units) =>
      `Cut the gauge from the packet, or mark a strip of card: ${lines.map((line) => line[units]).join("; ")}. Distances are from the fore-edge. Pack up the sinking side as the support table says, so that the gauge lies level.`,
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
      `Work at most ${kit.fit.batch} leaves at a time. ${first[units]}Mark from the head edge, cut square in from the ${cutEdge(pattern)} (never deeper than ${dualDepth(deepest)[units]}), fold each span ${pattern.fit.foldStyle === "stepped" ? "behind the front level once more " : ""}at its level's line and tuck it behind. Tick the row, and at each checkpoint compare the page number and the first mark before you turn on.`,
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
      `Stand the book up, head up, and open it until the folded edges of the first and last picture leaf are ${dualDepth(pattern.fit.holdWidth)[units]} apart, measured straight across; the boards' edges are then about ${dualDepth(pattern.fit.boardWidth)[units]} apart. At this width the picture has its true shape. Prop it there overnight.`,
  );
}

function same(text: string): Dual {
  return { mm: text, in: text };
}
