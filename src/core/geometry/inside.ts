import type { Point, Ring } from "./point.ts";

/** Height of a band, mm. */
const BAND = 2;

/** Whether points lie inside closed outlines, asked again and again: edges by bands. What an even number of outlines encloses is outside. */
export function insideOf(rings: readonly Ring[]): (point: { readonly x: number; readonly y: number }) => boolean {
  const bands = new Map<number, (readonly [Point, Point])[]>();
  for (const ring of rings)
    for (const [i, b] of ring.entries()) {
      const a = ring.at(i - 1)!;
      for (let band = bandOf(Math.min(a[1], b[1])); band <= bandOf(Math.max(a[1], b[1])); band += 1) {
        const own = bands.get(band);
        if (own) own.push([a, b]);
        else bands.set(band, [[a, b]]);
      }
    }
  return ({ x, y }) => {
    let inside = false;
    for (const edge of bands.get(bandOf(y)) ?? []) {
      const a = edge[0];
      const b = edge[1];
      if (a[1] <= y !== b[1] <= y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) inside = !inside;
    }
    return inside;
  };
}

function bandOf(y: number): number {
  return Math.floor(y / BAND);
}
