import type { Point } from "../../core/geometry/point.ts";
import { thinOut } from "../../core/geometry/simplify.ts";
import { shortRings } from "./short-path.ts";

/** Path data of drawings that are only looked at, never cut or measured by: to 0.1 of their units, each point told from the one before. */

/** How far an outline may lie from the true one where a drawing is as large as a diagram, in its units. */
const ROUGH = 0.08;

/** Closed outlines, with no more points than show; `rough` is how far they may lie from the true ones. */
export function lookedAt(rings: readonly (readonly Point[])[], rough = ROUGH): string {
  return shortRings(thinOut(rings, rough), 1);
}

/** A closed outline, with all its points. */
export function lookedShape(points: readonly Point[]): string {
  return shortRings([points], 1);
}

/** The same, open. */
export function lookedLine(points: readonly Point[]): string {
  return lookedShape(points).slice(0, -1);
}
