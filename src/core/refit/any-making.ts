import { isCutKit } from "../kit/cut-kit.ts";
import { computeCorner } from "../pattern/compute-corner.ts";
import { cornerCounts } from "../plan/corner-effort.ts";
import { counted, type Making, makeCut } from "./making.ts";

/** Makes kits that are cut, and kits that are folded by corners. */
export const makeAny: Making = (kit) => (isCutKit(kit) ? makeCut(kit) : counted(computeCorner(kit), cornerCounts));
