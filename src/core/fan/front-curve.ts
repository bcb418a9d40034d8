import { distance, type Fan, leafTip, type Place } from "./fan.ts";
import type { Front, LeafRange } from "./front.ts";

/** A point of the curve through the front level's tips. */
export interface CurvePoint extends Place {
  /** Distance from the picture's left edge as the picture is laid out (front: seen from the front; along: arc length), mm. */
  readonly across: number;
  /** Arc length along the tips from x = 0; negative to the viewer's left, mm. */
  readonly arc: number;
}

/** The curve through the front level's tips, from the picture's left edge to its right edge as the viewer sees it. */
export interface FrontCurve {
  readonly points: readonly CurvePoint[];
  readonly atAcross: (across: number) => CurvePoint;
  readonly atX: (x: number) => CurvePoint;
  readonly atArc: (arc: number) => CurvePoint;
}

/** Straight between neighbouring tips; beyond the outermost tips it goes on as between the last two, to the picture's edges and further. */
export function frontCurve(fan: Fan, range: LeafRange, front: Front, frontDepth: number): FrontCurve {
  const inOrder = front.stations.map((station, i) => ({ station, ...leafTip(fan, range.first + i, frontDepth) }));
  const placed = inOrder.map(({ station, x, z }) => ({
    x,
    z,
    across: fan.direction === "ltr" ? station : front.width - station,
  }));
  const seen = fan.direction === "ltr" ? placed : placed.reverse();
  const arcs: number[] = [0];
  for (let i = 1; i < seen.length; i += 1) arcs.push(arcs[i - 1]! + distance(seen[i - 1]!, seen[i]!));
  const raw = seen.map((point, i) => ({ ...point, arc: arcs[i]! }));
  const middle = interpolate(raw, "x", 0).arc;
  const points = raw.map((point) => ({ ...point, arc: point.arc - middle }));
  return {
    points,
    atAcross: (across) => interpolate(points, "across", across),
    atX: (x) => interpolate(points, "x", x),
    atArc: (arc) => interpolate(points, "arc", arc),
  };
}

function interpolate(points: readonly CurvePoint[], key: "across" | "x" | "arc", value: number): CurvePoint {
  let low = 0;
  let high = points.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (points[middle]![key] <= value) low = middle;
    else high = middle;
  }
  const a = points[low]!;
  const b = points[high]!;
  const share = (value - a[key]) / (b[key] - a[key]);
  const at = (of: keyof CurvePoint): number => a[of] + share * (b[of] - a[of]);
  return { x: at("x"), z: at("z"), across: at("across"), arc: at("arc") };
}
