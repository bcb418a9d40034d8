import { asCutKit } from "../kit/cut-kit.ts";
import { fitKit } from "../pattern/fit-kit.ts";
import { holdWidthOf } from "../pattern/hold-width.ts";
import type { Pattern } from "../pattern/pattern.ts";
import { countsOf } from "../plan/effort.ts";
import { workOf } from "../steps/work.ts";
import { benchWay } from "./bench-plan.ts";
import { leafEstimates } from "./leaf-estimates.ts";
import { otherWork } from "./other-work.ts";

/** Lays kits out whose leaves are cut. */
export const CUT_WAY = benchWay<Pattern>({
  make: (kit) => fitKit(asCutKit(kit)),
  work: (kit, pattern) => workOf(kit, pattern, countsOf(pattern)),
  beside: otherWork,
  estimates: leafEstimates,
  holdWidth: (fan, { levels, leaves }) => holdWidthOf(fan, levels, leaves),
  folds: ({ leaves }) => leaves.map(({ leaf, spans }) => [leaf, spans]),
});
