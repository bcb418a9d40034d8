import { toRadians } from "../../core/units/angle.ts";

/** From where the book is looked at; radians. */
export interface Orbit {
  /** The viewer's place round the book: 0 in front, positive to the right of it. */
  readonly turn: number;
  /** Above (positive) or below the book's middle height. */
  readonly tilt: number;
  /** Distance as a share of the one at which the whole book shows. */
  readonly distance: number;
}

export const FRONT: Orbit = { turn: 0, tilt: 0, distance: 1 };
export const THREE_QUARTER: Orbit = { turn: toRadians(-26), tilt: toRadians(14), distance: 1 };

const LEAST_TILT = toRadians(-30);
const MOST_TILT = toRadians(85);
const NEAREST = 0.35;
const FURTHEST = 1.8;

/** Turns, tilts and moves nearer (factor below 1) or further; tilt and distance stay within bounds. */
export function moved(orbit: Orbit, by: { turn?: number; tilt?: number; factor?: number }): Orbit {
  return {
    turn: orbit.turn + (by.turn ?? 0),
    tilt: Math.min(MOST_TILT, Math.max(LEAST_TILT, orbit.tilt + (by.tilt ?? 0))),
    distance: Math.min(FURTHEST, Math.max(NEAREST, orbit.distance * (by.factor ?? 1))),
  };
}

/** Time in which a movement that settles comes near its end by a factor e, ms. */
const SETTLE = 70;

/** The orbit some milliseconds later on its way to a wanted one; the wanted one itself when it is as good as there. */
export function settled(orbit: Orbit, wanted: Orbit, milliseconds: number): Orbit {
  const share = 1 - Math.exp(-milliseconds / SETTLE);
  const next = {
    turn: orbit.turn + share * (wanted.turn - orbit.turn),
    tilt: orbit.tilt + share * (wanted.tilt - orbit.tilt),
    distance: orbit.distance + share * (wanted.distance - orbit.distance),
  };
  const rest =
    Math.abs(wanted.turn - next.turn) + Math.abs(wanted.tilt - next.tilt) + Math.abs(wanted.distance - next.distance);
  return rest < 1e-3 ? wanted : next;
}

/** The same view with the turn between −180° and 180°. */
export function unwound(orbit: Orbit): Orbit {
  return { ...orbit, turn: orbit.turn - 2 * Math.PI * Math.round(orbit.turn / (2 * Math.PI)) };
}
