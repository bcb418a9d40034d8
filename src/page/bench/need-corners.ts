import type { BenchWay } from "../../core/bench/bench-plan.ts";
import { CUT_WAY } from "../../core/bench/cut-way.ts";
import { isCutKit } from "../../core/kit/cut-kit.ts";
import type { Kit } from "../../core/kit/kit.ts";
import { loadScript } from "../shared/load-script.ts";
import type { BenchFace } from "./bench-face.ts";
import type { PieceSheets } from "./piece-sheets.ts";

/** All that the bench and the page of a piece need of kits whose corners are folded: a script of its own. */
export interface CornerBench {
  readonly way: BenchWay;
  readonly face: BenchFace;
  readonly sheets: PieceSheets;
}

declare global {
  interface Window {
    leaflightCornerBench?: CornerBench;
  }
}

/** How a kit's leaves are made at the bench; what folds corners is fetched where it needs it. @throws LoadError */
export async function needWay(kit: Kit, load = loadScript): Promise<BenchWay> {
  if (isCutKit(kit)) return CUT_WAY;
  if (!self.leaflightCornerBench) await load("../../../assets/scripts/corner-bench.js", "corners");
  return self.leaflightCornerBench!.way;
}
