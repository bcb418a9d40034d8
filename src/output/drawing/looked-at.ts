import type { Point } from "../../core/geometry/point.ts";
import { thinOut } from "../../core/geometry/simplify.ts";
import { shortRings } from "./short-path.ts";

/** How far an outline that is only looked at may lie from the true one where a drawing is as large as a diagram, in its units. */
const ROUGH = 0.08;

/**
 * Path data of closed outlines that are only looked at, never cut or measured by: to 0.1 of the drawing's units, each point told
 * from the one before, with no more points than show; `rough` is how far they may lie from the true ones.
 */
export function lookedAt(rings: readonly (readonly Point[])[], rough = ROUGH): string {
  return shortRings(thinOut(rings, rough), 1);
}
