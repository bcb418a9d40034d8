import { type Field, joinRuns, runsOf } from "./runs.ts";

/** Of an area: what stands apart in it, and its holes, both after small ones were left out; and how many of these there were. */
export interface Parts {
  readonly parts: number;
  readonly holes: number;
  readonly specks: number;
  /** Pixels inside. */
  readonly inside: number;
}

/**
 * Takes parts of fewer than `least` pixels out of a field, and then closes holes of fewer: in place. Pixels of a part touch by
 * their sides, those of a hole also by their corners, so that no part crosses a hole.
 */
export function leaveOutSpecks(field: Field, least: number): Parts {
  const parts = flipSmall(field, { inside: true, least });
  const holes = flipSmall(field, { inside: false, least });
  const specks = parts.flipped + holes.flipped;
  return { parts: parts.kept, holes: holes.kept, specks, inside: field.values.length - holes.pixels };
}

interface Wanted {
  readonly inside: boolean;
  readonly least: number;
}

/** Flips what is small on one side; how many parts of that side were kept, with how many pixels, and how many were flipped. */
function flipSmall(field: Field, { inside, least }: Wanted): { kept: number; pixels: number; flipped: number } {
  const runs = runsOf(field, inside);
  const part = joinRuns(runs, field.width, !inside);
  const sizes = new Int32Array(part.length);
  part.forEach((root, run) => {
    sizes[root]! += runs.to[run]! - runs.from[run]!;
  });
  const found = { kept: 0, pixels: 0, flipped: 0 };
  part.forEach((root, run) => {
    const size = sizes[root]!;
    if (size < least) flip(field.values, runs.from[run]!, runs.to[run]!);
    if (root !== run) return;
    if (size < least) found.flipped += 1;
    else [found.kept, found.pixels] = [found.kept + 1, found.pixels + size];
  });
  return found;
}

/** What was just inside by 0 comes to lie just outside. */
function flip(values: Float32Array, from: number, to: number): void {
  for (let at = from; at < to; at += 1)
    values[at] = values[at]! >= 0 ? Math.min(-values[at]!, -Number.EPSILON) : -values[at]!;
}

/** Sides between pixels inside and pixels outside. */
export function sidesOf({ width, height, values }: Field): number {
  let sides = 0;
  for (let y = 0, at = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1, at += 1) {
      const inside = values[at]! >= 0;
      if (x < width - 1 && values[at + 1]! >= 0 !== inside) sides += 1;
      if (y < height - 1 && values[at + width]! >= 0 !== inside) sides += 1;
    }
  }
  return sides;
}
