import { atOnce, type Steps } from "../in-steps.ts";
import type { CutKit } from "../kit/cut-kit.ts";
import { type FitResult, patternSteps } from "./compute.ts";

/** Whether a kit can be made on its book, whoever asks: its pattern, which must cut some leaf, or why there is none. */
export function fitKit(kit: CutKit): FitResult {
  return atOnce(fitSteps(kit));
}

/** The same in steps. */
export function* fitSteps(kit: CutKit): Steps<FitResult> {
  const result = yield* patternSteps(kit);
  if (!result.fits || result.pattern.leaves.some(({ cuts }) => cuts.length > 0)) return result;
  const { height, leastTab } = result.pattern.fit;
  return { fits: false, finding: { kind: "picture-flat", height, leastTab } };
}
