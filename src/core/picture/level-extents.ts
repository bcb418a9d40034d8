import { columnsAt } from "./column.ts";
import type { LevelMap } from "./level-map.ts";

/** From where to where a level shows, as fractions of the picture's width from the left; undefined where it shows nowhere. */
export type Extent = readonly [from: number, to: number];

const SAMPLES = 512;

const known = new WeakMap<LevelMap, readonly (Extent | undefined)[]>();

/** The extent of each level (the first is level 1), sampled at 1 in 512 of the width; a picture is read once. */
export function levelExtents(map: LevelMap): readonly (Extent | undefined)[] {
  const found = known.get(map);
  if (found) return found;
  const fractions = Array.from({ length: SAMPLES }, (_, i) => (i + 0.5) / SAMPLES);
  const { starts, levels } = columnsAt(
    map,
    fractions.map((fraction) => fraction * map.width),
  );
  const extents: (Extent | undefined)[] = [];
  for (const [i, fraction] of fractions.entries())
    for (const level of levels.subarray(starts[i]!, starts[i + 1]!))
      extents[level - 1] = [extents[level - 1]?.[0] ?? fraction, fraction];
  known.set(map, extents);
  return extents;
}
