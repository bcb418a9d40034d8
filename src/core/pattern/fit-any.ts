import { asCutKit } from "../kit/cut-kit.ts";
import type { Kit } from "../kit/kit.ts";
import type { FitResult } from "./compute.ts";
import { computeCorner } from "./compute-corner.ts";
import type { AnyPattern } from "./corner-pattern.ts";
import { fitKit } from "./fit-kit.ts";

/** Whether a kit can be made on its book, whichever way its leaves are made: its pattern, or why there is none. */
export function fitAny(kit: Kit): FitResult<AnyPattern> {
  return kit.fit.foldStyle === "corner" ? computeCorner(kit) : fitKit(asCutKit(kit));
}
