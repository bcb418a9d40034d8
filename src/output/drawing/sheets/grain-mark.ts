import type { Point } from "../../../core/geometry/point.ts";
import { grainOf } from "../../../core/window/grain.ts";
import type { Part } from "../../../core/window/part.ts";
import { shortRings } from "../short-path.ts";
import { tag } from "../svg-text.ts";

/** An arrowhead above a spot, clear of a letter's disc there, mm: across and along the grain. */
const HEAD: readonly Point[] = [
  [-0.9, -3.2],
  [0, -4.8],
  [0.9, -3.2],
];

/** Two arrowheads at a spot of a part that show the grain of its card; empty where it does not matter. */
export function grainMark(part: Part, spot: Point | undefined, place: (point: Point) => Point): string {
  const grain = grainOf(part);
  if (!grain || !spot) return "";
  const [x, y] = spot;
  const heads = [1, -1].map((side) =>
    HEAD.map(([across, along]) =>
      place(grain === "upright" ? [x + across, y + side * along] : [x + side * along, y + across]),
    ),
  );
  return tag("path", { d: shortRings(heads) });
}
