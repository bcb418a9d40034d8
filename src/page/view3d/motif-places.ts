import { boxOf } from "../../core/geometry/box.ts";
import type { Ring } from "../../core/geometry/point.ts";
import { seatMotifs } from "../../core/window/motif-seats.ts";
import type { RoundData, RoundInsert, RoundLight } from "../../output/data/round-data.ts";
import { curveIn, fanAt } from "./pose.ts";

/** The motifs set on the glazing as in the front picture. */
export function placedMotifs(data: RoundData, insert: RoundInsert): Ring[] {
  const guide = insert.parts.find((part) => part.kind === "decoration-guide");
  if (!guide) return [];
  const motifs = insert.parts.filter((part) => part.kind === "largest-motif" || part.kind === "motif");
  const light = data.light && { middle: middleOf(data, insert, data.light), floor: data.light.floor };
  const seated = seatMotifs(
    motifs.map((motif) => motif.outlines),
    boxOf(guide.outlines),
    light,
  );
  return seated.flat();
}

/** The light's middle in the panel's own x. */
function middleOf(data: RoundData, { panel }: RoundInsert, { centre }: RoundLight): number {
  return panel === "flat" ? centre.x : curveIn(data, fanAt(data, data.fit.opening)).atX(centre.x).arc;
}
