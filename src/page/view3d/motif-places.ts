import type { Point, Ring } from "../../core/geometry/point.ts";
import type { RoundData, RoundInsert, RoundPart } from "../../output/data/round-data.ts";
import { curveIn, fanAt } from "./pose.ts";

type Size = readonly [width: number, height: number];

/** The motifs set on the glazing as in the front picture: the largest low before the light, then high on the right, low on the left. */
export function placedMotifs(data: RoundData, insert: RoundInsert): Ring[] {
  const guide = insert.parts.find((part) => part.name === "decoration guide");
  if (!guide) return [];
  const [[left, top], [right, bottom]] = corners(guide);
  const [across, down] = [right - left, bottom - top];
  const middle = lightPlace(data, insert) ?? (left + right) / 2;
  const foot = Math.min(data.light?.floor ?? bottom, bottom - 1);
  const seats: ((size: Size) => Point)[] = [
    ([width, height]) => [middle - width / 2, foot - height],
    ([width]) => [right - width - 0.05 * across, top + 0.25 * down],
    ([, height]) => [left + 0.025 * across, bottom - 0.13 * down - height],
  ];
  const motifs = insert.parts.filter((part) => part.name.startsWith("motif "));
  return motifs.slice(0, seats.length).flatMap((motif, i) => {
    const [from, to] = corners(motif);
    const seat = seats[i]!([to[0] - from[0], to[1] - from[1]]);
    return motif.outlines.map((ring) => ring.map(([x, y]): Point => [x + seat[0] - from[0], y + seat[1] - from[1]]));
  });
}

/** The light's middle in the panel's own x. */
function lightPlace(data: RoundData, insert: RoundInsert): number | undefined {
  if (!data.light) return undefined;
  const { x } = data.light.centre;
  return insert.panel === "flat" ? x : curveIn(data, fanAt(data, data.fit.opening)).atX(x).arc;
}

function corners(part: RoundPart): [Point, Point] {
  const xs = part.outlines.flat().map(([x]) => x);
  const ys = part.outlines.flat().map(([, y]) => y);
  return [
    [Math.min(...xs), Math.min(...ys)],
    [Math.max(...xs), Math.max(...ys)],
  ];
}
