import { type Affine, compose } from "../../core/geometry/affine.ts";
import type { Ring } from "../../core/geometry/point.ts";
import { outlinePath } from "../svg/path-outline.ts";
import type { Cluster } from "./set-line.ts";

/** Outlines of a cluster's letters, y down, where a map takes them; curves as chords within a tolerance. Overlapping ones count as one: nonzero. */
export function clusterRings({ font, glyphs }: Cluster, seat: Affine, tolerance: number): Ring[] {
  let at = 0;
  return glyphs.flatMap(({ id, x, y, advance }) => {
    const map = compose(seat, [1, 0, 0, -1, at + x, -y]);
    at += advance;
    return outlinePath(font.outline(id), map, tolerance);
  });
}
