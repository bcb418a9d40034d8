import type { AnyPattern } from "../../core/pattern/corner-pattern.ts";
import type { Pattern } from "../../core/pattern/pattern.ts";
import { countsOf, effortOf } from "../../core/plan/effort.ts";
import { suppliesOf } from "../../core/supplies/supplies.ts";
import { leavesTable } from "../../output/parts/pattern.ts";
import { rowOf } from "../../output/views/row.ts";
import { stepsOf } from "../../output/views/steps.ts";
import type { PieceSheets } from "../bench/piece-sheets.ts";
import { fetchedStep, fetchStepDrawings } from "../shared/step-drawings.ts";

/** What the page of a piece shows of a pattern, whose way was fetched when the piece was opened. */
export function sheetsOf({ pattern }: { readonly pattern: AnyPattern }): PieceSheets {
  return pattern.corner ? self.leaflightCornerBench!.sheets : CUT_SHEETS;
}

const CUT_SHEETS: PieceSheets<Pattern> = {
  steps: async ({ kit, pattern, work }) => {
    await fetchStepDrawings("../../../");
    const counts = countsOf(pattern);
    return stepsOf(kit, pattern, work, { counts, effort: effortOf(counts, kit.rates) }, fetchedStep);
  },
  supplies: ({ kit, pattern }) => suppliesOf(kit, pattern, countsOf(pattern)),
  table: (caption, { pattern }, { first, last }, style) => {
    const own = pattern.leaves.filter(({ leaf }) => leaf >= first && leaf <= last);
    return String(
      leavesTable(
        caption,
        own.map((leaf) => rowOf(leaf, pattern, style)),
      ),
    );
  },
};
