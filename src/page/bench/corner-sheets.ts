import type { CornerPattern } from "../../core/pattern/corner-pattern.ts";
import { cornerCounts } from "../../core/plan/corner-effort.ts";
import { effortOf } from "../../core/plan/effort.ts";
import { cornerSupplies } from "../../core/supplies/corner-supplies.ts";
import { cornerTable } from "../../output/parts/corner-pattern.ts";
import { cornerRow } from "../../output/views/corner-row.ts";
import { cornerStepsOf } from "../../output/views/corner-steps.ts";
import type { PieceSheets } from "./piece-sheets.ts";

/** What the page of a piece shows where corners are folded. */
export const CORNER_SHEETS: PieceSheets<CornerPattern> = {
  steps: ({ kit, pattern, work }) => {
    const effort = effortOf(cornerCounts(pattern), kit.rates);
    return Promise.resolve(cornerStepsOf(kit, { pattern, shown: pattern }, work, effort));
  },
  supplies: ({ kit, work }) => cornerSupplies(kit, work),
  table: (caption, { pattern }, { first, last }, style) => {
    const own = pattern.leaves.filter(({ leaf }) => leaf >= first && leaf <= last);
    return String(
      cornerTable(
        caption,
        own.map((leaf) => cornerRow(leaf, style)),
      ),
    );
  },
};
