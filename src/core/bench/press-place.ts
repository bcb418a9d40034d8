import { depthAt, flapsOf, lyingAt } from "../corner/leaf-fold.ts";
import type { CornerPattern } from "../pattern/corner-pattern.ts";
import { pictureLeaves } from "../pattern/pattern.ts";

/** Where folded leaves are pressed together to measure them, mm from the head and from the fore-edge. */
export interface PressPlace {
  readonly at: number;
  readonly depth: number;
  /** Leaves that have a corner folded over there. */
  readonly flaps: number;
}

/** Places are tried so far apart, mm: about a finger's width. */
const STEP = 5;

/**
 * Where the first picture leaves of a kit that is folded by corners are best measured: at a place where all of them lie, and
 * most have a flap, the nearest to the middle of its surroundings where as many have one. Undefined where there is none.
 */
export function pressPlace(pattern: CornerPattern, count: number): PressPlace | undefined {
  const { leafHeight, leafWidth } = pattern.book;
  const folds = pictureLeaves(pattern)
    .slice(0, count)
    .map(({ fold }) => ({ fold, flaps: flapsOf(fold) }));
  const row = (at: number): PressPlace[] =>
    placesAlong(leafWidth)
      .filter((depth) => folds.every(({ fold }) => depthAt(fold, at) <= depth))
      .map((depth) => {
        const lying = folds.filter(({ flaps }) =>
          flaps.some((flap) => {
            const [from, to] = lyingAt(flap, at) ?? [1, 0];
            return from <= depth && depth <= to;
          }),
        );
        return { at, depth, flaps: lying.length };
      });
  const places = placesAlong(leafHeight).flatMap(row);
  const most = Math.max(0, ...places.map(({ flaps }) => flaps));
  return most === 0 ? undefined : midmost(places.filter(({ flaps }) => flaps === most));
}

function placesAlong(length: number): number[] {
  return Array.from({ length: Math.ceil(length / STEP) - 1 }, (_, i) => (i + 1) * STEP);
}

/** Of places that are as good as each other the one nearest to the middle of all on its side of the leaf. */
function midmost(places: readonly PressPlace[]): PressPlace {
  const [first] = places;
  const near = places.filter(({ at }) => Math.abs(at - first!.at) < 8 * STEP);
  const middle = (of: (place: PressPlace) => number): number =>
    near.reduce((sum, place) => sum + of(place), 0) / near.length;
  const [at, depth] = [middle((place) => place.at), middle((place) => place.depth)];
  const away = (place: PressPlace): number => Math.hypot(place.at - at, place.depth - depth);
  return near.reduce((best, place) => (away(place) < away(best) ? place : best));
}
