import { pathPoint } from "../path.ts";
import { shortLine, shortRing } from "../short-path.ts";
import { tag } from "../svg-text.ts";
import type { At } from "./ink.ts";

const HEAD_LENGTH = 2.4;
const HEAD_HALF = 0.95;

/** A movement along two points, or bent toward the middle one of three. The line stops inside the head, so that the point stays sharp. */
export function arrowAlong(points: readonly At[]): string {
  const [tip, before] = [points.at(-1)!, points.at(-2)!];
  const length = Math.hypot(tip[0] - before[0], tip[1] - before[1]);
  const [ux, uy] = [(tip[0] - before[0]) / length, (tip[1] - before[1]) / length];
  const along = (back: number, aside: number): At => [tip[0] - back * ux - aside * uy, tip[1] - back * uy + aside * ux];
  const start = points[0]!;
  const end = along(HEAD_LENGTH * 0.8, 0);
  const shaft =
    points.length === 2
      ? shortLine([start, end], 2)
      : `M${pathPoint(start)}Q${pathPoint(points[1]!)} ${pathPoint(end)}`;
  const head = shortRing([tip, along(HEAD_LENGTH, HEAD_HALF), along(HEAD_LENGTH, -HEAD_HALF)], 2);
  return (
    tag("path", { d: shaft, fill: "none", stroke: "#000", "stroke-width": "0.4" }) +
    tag("path", { d: head, fill: "#000" })
  );
}
