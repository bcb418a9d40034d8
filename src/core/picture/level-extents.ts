import { readColumns } from "./column.ts";
import type { LevelMap } from "./level-map.ts";

/** From where to where a level shows, as fractions of the picture's width from the left; undefined where it shows nowhere. */
export type Extent = readonly [from: number, to: number];

const SAMPLES = 512;

const known = new WeakMap<LevelMap, readonly (Extent | undefined)[]>();

/** The extent of each level (the first is level 1), sampled at 1 in 512 of the width; a picture is read once. */
export function levelExtents(map: LevelMap): readonly (Extent | undefined)[] {
  const found = known.get(map);
  if (found) return found;
  const read = readColumns(map);
  const extents: (Extent | undefined)[] = [];
  for (let i = 0; i < SAMPLES; i += 1) {
    const fraction = (i + 0.5) / SAMPLES;
    for (const { level } of read(fraction * map.width))
      extents[level - 1] = [extents[level - 1]?.[0] ?? fraction, fraction];
  }
  known.set(map, extents);
  return extents;
}
