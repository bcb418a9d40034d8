import type { Front } from "../fan/front.ts";

/**
 * Where in the picture a station of the front lies, as a fraction of the picture's width counted in book order.
 * Beyond the outer edges the line goes on, so values outside 0 … 1 are outside the picture.
 */
export type FaceMap = (station: number) => number;

/** A stretch of the front on which the picture is laid out evenly. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
}

/**
 * Maps of the front to the picture, one for each picture leaf (0-based in the picture). Without lost leaves all are the same:
 * the first cell's outer edge is 0, the last one's is 1. After a lost leaf (skipped, torn) the rest of the picture is laid out
 * anew over the leaves that remain, so that nothing of it is missing; the leaves before it keep the map they were folded with.
 */
export function layFaces(front: Front, lost: readonly number[]): FaceMap[] {
  const cells = front.edges.length - 1;
  let stretches: readonly Stretch[] = [{ from: 0, to: front.width, start: 0, end: 1 }];
  const faces: FaceMap[] = [];
  for (let cell = 0; cell < cells; cell += 1) {
    if (lost.includes(cell)) stretches = closeOver(stretches, front.edges[cell]!, front.edges[cell + 1]!);
    const fixed = stretches;
    faces.push((station) => mapStation(fixed, station));
  }
  return faces;
}

function closeOver(stretches: readonly Stretch[], from: number, to: number): Stretch[] {
  const last = stretches.at(-1)!;
  if (to >= last.to) return [...stretches];
  const start = mapStation(stretches, from);
  const kept = stretches.slice(0, -1);
  const before = from > last.from ? [{ from: last.from, to: from, start: last.start, end: start }] : [];
  return [...kept, ...before, { from: to, to: last.to, start, end: last.end }];
}

function mapStation(stretches: readonly Stretch[], station: number): number {
  const found = stretches.find((stretch) => station < stretch.to) ?? stretches.at(-1)!;
  const inside = found === stretches[0] ? station : Math.max(station, found.from);
  return found.start + ((inside - found.from) / (found.to - found.from)) * (found.end - found.start);
}
