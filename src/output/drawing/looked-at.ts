import { boxOf } from "../../core/geometry/box.ts";
import type { Point } from "../../core/geometry/point.ts";
import { thinOut } from "../../core/geometry/simplify.ts";
import type { MotifPart } from "../../core/window/motif.ts";
import { shortRings } from "./short-path.ts";

/** How far an outline that is only looked at may lie from the true one where a drawing is as large as a diagram, in its units. */
const ROUGH = 0.08;

/** How far a motif’s outlines may lie from the true ones, mm: where it is shown with its window, and as a share of its height where it is shown alone. */
const MOTIF_ROUGH = { mm: 0.16, share: 0.004 } as const;

/** Path data of a motif in its own frame: the same wherever it is looked at, so that pages which show it again are packed small. */
export function motifLookedAt({ outlines }: Pick<MotifPart, "outlines">): string {
  const { top, bottom } = boxOf(outlines);
  return lookedAt(outlines, Math.min(MOTIF_ROUGH.mm, MOTIF_ROUGH.share * (bottom - top)));
}

/**
 * Path data of closed outlines that are only looked at, never cut or measured by: to 0.1 of the drawing's units, each point told
 * from the one before, with no more points than show; `rough` is how far they may lie from the true ones.
 */
export function lookedAt(rings: readonly (readonly Point[])[], rough = ROUGH): string {
  return shortRings(thinOut(rings, rough), 1);
}
