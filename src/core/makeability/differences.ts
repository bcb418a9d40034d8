import type { Box } from "../geometry/box.ts";
import type { Assessment } from "./assessment.ts";
import type { LostBox } from "./kept-levels.ts";

/** A place where a piece will look different from its picture. Lengths mm: x from the fan's middle, y from the head. */
export type Difference = Placed &
  (
    | { readonly kind: "slivers"; readonly into: number; readonly strips: number }
    /** Sides of prouder leaves stand before it; or no folded edge of its level stands so far out. */
    | { readonly kind: "hidden" | "unreached"; readonly boxes: readonly Box[] }
    /** Fewer than two leaves show it: one, or none. */
    | { readonly kind: "narrow"; readonly leaves: number }
  );

interface Placed {
  readonly level: number;
  readonly box: Box;
  /** How much of the front it takes, mm². */
  readonly area: number;
}

/** Places of what is hidden or out of reach that are nearer to each other are one, mm. */
const APART = 4;

/** Less than this is not seen as a place of its own, mm² (an estimate). */
const SEEN = 4;

/** All places where it will look different, the largest first. */
export function differencesOf({
  slivers,
  narrow,
  seen,
}: Pick<Assessment, "slivers" | "narrow" | "seen">): Difference[] {
  const merged = slivers.map(({ level, into, strips, left, right, from, to, area }): Difference => {
    return { kind: "slivers", level, into, strips, area, box: { left, right, top: from, bottom: to } };
  });
  const thin = narrow.map(({ level, leaves, left, right, top, bottom }): Difference => {
    const box = { left, right, top, bottom };
    return { kind: "narrow", level, leaves, box, area: areaOf(box) };
  });
  const lost = Map.groupBy(seen?.lost ?? [], ({ level, fate }) => `${level} ${fate}`);
  const places = [...lost.values()].flatMap((boxes) => placesOf(boxes));
  return [...places, ...merged, ...thin].toSorted((a, b) => b.area - a.area);
}

/** Joins boxes of one level and fate, which come from left to right, where they stand side by side. */
function placesOf(boxes: readonly LostBox[]): Difference[] {
  const places: LostBox[][] = [];
  for (const box of boxes) {
    const last = places.at(-1);
    if (last && box.left - last.at(-1)!.right < APART) last.push(box);
    else places.push([box]);
  }
  return places
    .map((own): Difference => {
      const { level, fate } = own[0]!;
      const area = own.reduce((sum, box) => sum + areaOf(box), 0);
      return { kind: fate, level, area, box: around(own), boxes: own };
    })
    .filter(({ area }) => area >= SEEN);
}

function around(boxes: readonly Box[]): Box {
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    right: Math.max(...boxes.map(({ right }) => right)),
    top: Math.min(...boxes.map(({ top }) => top)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
}

function areaOf({ left, right, top, bottom }: Box): number {
  return (right - left) * (bottom - top);
}
