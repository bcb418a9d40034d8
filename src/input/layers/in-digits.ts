import type { LevelMap } from "../../core/picture/level-map.ts";
import { tidy } from "../../core/units/length.ts";

/** Digits of a picture's coordinates, those of its size included: nine after the point where it is a hundred wide. */
const DIGITS = 12;

/** A picture without the digits that only come of reckoning: pages carry every point of it, and compute from the same points as a build. */
export function inDigits({ width, height, background, shapes }: LevelMap): LevelMap {
  const decimals = Math.max(0, DIGITS - Math.ceil(Math.log10(Math.max(width, height))));
  const kept = (value: number): number => tidy(value, decimals);
  return {
    width: kept(width),
    height: kept(height),
    background,
    shapes: shapes.map((shape) => ({
      ...shape,
      rings: shape.rings.map((ring) => ring.map(([x, y]) => [kept(x), kept(y)] as const)),
    })),
  };
}
