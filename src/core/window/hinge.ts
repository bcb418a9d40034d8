import { type Area, rectangle, sizeOf, unite } from "../geometry/area.ts";
import { boxOf } from "../geometry/box.ts";
import { clipArea } from "../geometry/clip-ring.ts";
import { type Stretch, stretchesOf, uprightCrossings } from "../geometry/crossings.ts";
import type { Line } from "./part.ts";

/** A door: the frame's outline cut straight at the hinge, with a flap beyond it that folds back under the door. */
export interface Door {
  readonly outlines: Area;
  /** The hinge. */
  readonly score: Line;
  readonly flapWidth: number;
}

/** How long a hinge is wanted, the shortest that holds, how much of a bulge may be cut straight for it, and flap sizes; mm (common practice, no source). */
const LONG = 40;
export const SHORTEST_HINGE = 18;
export const MOST_BULGE = 4;
const FLAP = 12;
const LEAST_FLAP = 5;
const CHAMFER = 2;
const MARGIN = 1.5;

/**
 * Hinges a frame (outer outline less hole) at its left or right. The hinge is the straight line nearest the side whose
 * stretch inside the frame is long enough; what bulges beyond it is cut away, at most 4 mm. Undefined where no such line is,
 * or no flap of 5 mm would lie on the card behind the door.
 */
export function hangDoor(frame: Area, side: "left" | "right"): Door | undefined {
  if (side === "right") {
    const door = hangDoor(mirror(frame), "left");
    return door && { ...door, outlines: mirror(door.outlines), score: door.score.map(([x, y]) => [-x, y] as const) };
  }
  const box = boxOf(frame);
  const wanted = Math.min(LONG, (box.bottom - box.top) * 0.4);
  for (const least of [wanted, (wanted + SHORTEST_HINGE) / 2, SHORTEST_HINGE]) {
    for (let bulge = 0.1; bulge <= MOST_BULGE && least >= SHORTEST_HINGE; bulge += 0.1) {
      const x = box.left + bulge;
      const stretch = longestStretch(frame, x);
      if (!stretch || stretch.to - stretch.from < least) continue;
      const door = withFlap(frame, x, stretch);
      if (door) return door;
      break;
    }
  }
  return undefined;
}

function withFlap(frame: Area, x: number, stretch: Stretch): Door | undefined {
  const { from, to } = stretch;
  for (let width = FLAP; width >= LEAST_FLAP; width -= 0.5) {
    const flap: Area = [
      [
        [x, from],
        [x, to],
        [x - width, to - CHAMFER],
        [x - width, from + CHAMFER],
      ],
    ];
    const folded = flap.map((ring) => ring.map(([px, py]) => [2 * x - px + (px < x ? MARGIN : 0), py] as const));
    if (sizeOf(folded) - sizeOf(clipArea(frame, folded[0]!)) > 0.01) continue;
    const box = boxOf(frame);
    const kept = clipArea(frame, rectangle(x, box.top - 1, box.right + 1, box.bottom + 1));
    return {
      outlines: unite(kept, flap),
      score: [
        [x, from],
        [x, to],
      ],
      flapWidth: width,
    };
  }
  return undefined;
}

/** The longest stretch of the upright line at x inside an area, the first among equals. */
function longestStretch(area: Area, x: number): Stretch | undefined {
  return stretchesOf(uprightCrossings(area, x)).reduce<Stretch | undefined>(
    (best, one) => (best && one.to - one.from <= best.to - best.from ? best : one),
    undefined,
  );
}

function mirror(area: Area): Area {
  return area.map((ring) => ring.map(([x, y]) => [-x, y] as const).reverse());
}
