import { boxOf } from "../geometry/box.ts";
import { oncePer } from "../kept-with.ts";
import { readRuns } from "./column.ts";
import type { LevelMap } from "./level-map.ts";

/** From where to where a level shows, as fractions of the picture's width from the left; undefined where it shows nowhere. */
export type Extent = readonly [from: number, to: number];

const SAMPLES = 512;

/** An end of a level that is sought: the sample that may show it, and which way it goes on from there. */
interface End {
  readonly level: number;
  readonly step: 1 | -1;
  at: number;
}

/** The extent of each level (the first is level 1), sampled at 1 in 512 of the width; a picture is read once. */
export const levelExtents: (map: LevelMap) => readonly (Extent | undefined)[] = oncePer(findExtents);

/** Goes inward from where each level is drawn, by ever more samples at once: mostly the first of them show it. */
function findExtents(map: LevelMap): (Extent | undefined)[] {
  const levels = [...new Set([map.background, ...map.shapes.map(({ level }) => level)])];
  const ends = levels.map((level) => endsOf(map, level));
  const shown = new Map<number, ReadonlySet<number>>();
  let open = ends.flat();
  for (let ahead = 1; open.length > 0; ahead *= 4) {
    const next = open.flatMap(({ at, step }) => Array.from({ length: ahead }, (_, i) => at + i * step));
    const unread = [...new Set(next)].filter((sample) => isSample(sample) && !shown.has(sample));
    for (const [sample, seen] of levelsShown(map, unread)) shown.set(sample, seen);
    for (const end of open) while (shown.get(end.at)?.has(end.level) === false) end.at += end.step;
    open = open.filter(({ at }) => isSample(at) && !shown.has(at));
  }
  const extents: (Extent | undefined)[] = [];
  for (const [from, to] of ends) if (isSample(from.at)) extents[from.level - 1] = [placeOf(from.at), placeOf(to.at)];
  return extents;
}

/** The outermost samples that a level's shapes may reach; the background may be seen anywhere. */
function endsOf({ width, background, shapes }: LevelMap, level: number): [End, End] {
  const { left, right } = boxOf(shapes.flatMap((shape) => (shape.level === level ? shape.rings : [])));
  const isAnywhere = level === background;
  const first = isAnywhere ? 0 : Math.max(0, Math.floor((left / width) * SAMPLES) - 1);
  const last = isAnywhere ? SAMPLES - 1 : Math.min(SAMPLES - 1, Math.ceil((right / width) * SAMPLES));
  return [
    { level, step: 1, at: first },
    { level, step: -1, at: last },
  ];
}

/** The levels that some samples show. */
function levelsShown(map: LevelMap, samples: readonly number[]): [sample: number, levels: ReadonlySet<number>][] {
  const columns = readRuns(
    map,
    samples.map((sample) => placeOf(sample) * map.width),
  );
  return samples.map((sample, i) => [sample, new Set(columns[i]!.map(({ level }) => level))]);
}

function placeOf(sample: number): number {
  return (sample + 0.5) / SAMPLES;
}

function isSample(number: number): boolean {
  return number >= 0 && number < SAMPLES;
}
