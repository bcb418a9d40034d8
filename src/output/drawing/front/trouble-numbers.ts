import type { Point } from "../../../core/geometry/point.ts";
import type { FigureArea } from "../figure.ts";
import { numberMark } from "./trouble-marks.ts";

/** Most numbers of one trouble, at its largest places. */
const NUMBERS = 3;

/** Numbers at the first of the places of each trouble, moved apart where they would touch and held inside the drawing. */
export function troubleNumbers(troubles: readonly (readonly Point[])[], area: FigureArea, ring: number): string[] {
  const taken: Point[] = [];
  const [right, bottom] = [area.left + area.width - ring, area.top + area.height - ring];
  const inside = ([x, y]: Point): Point => [
    Math.min(right, Math.max(area.left + ring, x)),
    Math.min(bottom, Math.max(area.top + ring, y)),
  ];
  return troubles.flatMap((places, i) =>
    places.slice(0, NUMBERS).flatMap((place) => {
      const free = steps(ring)
        .map(([dx, dy]) => inside([place[0] + dx, place[1] + dy]))
        .find(([x, y]) => taken.every((other) => Math.hypot(other[0] - x, other[1] - y) >= 2.2 * ring));
      if (!free) return [];
      taken.push(free);
      return [numberMark(free[0], free[1], ring, i + 1)];
    }),
  );
}

/** Where a number may move to: nowhere, then round its place in wider and wider rings. */
function steps(ring: number): Point[] {
  const around = [2.3, 4.6, 7].flatMap((far) =>
    Array.from(
      { length: 8 },
      (_, i): Point => [far * ring * Math.cos((i * Math.PI) / 4), far * ring * Math.sin((i * Math.PI) / 4)],
    ),
  );
  return [[0, 0], ...around];
}
