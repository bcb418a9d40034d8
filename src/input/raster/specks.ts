/** Pixels in rows; a value of 0 or more lies inside the area, and the outline is where it would be 0. */
export interface Field {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

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
  let inside = 0;
  for (const value of field.values) if (value >= 0) inside += 1;
  return { parts: parts.kept, holes: holes.kept, specks: parts.flipped + holes.flipped, inside };
}

interface Wanted {
  readonly inside: boolean;
  readonly least: number;
}

function flipSmall(field: Field, { inside, least }: Wanted): { kept: number; flipped: number } {
  const { values } = field;
  const seen = new Uint8Array(values.length);
  const queue = new Int32Array(values.length);
  let kept = 0;
  let flipped = 0;
  for (let start = 0; start < values.length; start += 1) {
    if (seen[start] === 1 || values[start]! >= 0 !== inside) continue;
    const count = gather(field, start, { seen, queue, inside });
    if (count >= least) {
      kept += 1;
      continue;
    }
    flipped += 1;
    for (let i = 0; i < count; i += 1) values[queue[i]!] = turned(values[queue[i]!]!, inside);
  }
  return { kept, flipped };
}

/** What was just inside by 0 comes to lie just outside. */
function turned(value: number, inside: boolean): number {
  return inside ? Math.min(-value, -Number.EPSILON) : -value;
}

/** Collects the pixels of the part that holds `start` in `queue`; gives their number. */
function gather(
  { width, height, values }: Field,
  start: number,
  { seen, queue, inside }: { readonly seen: Uint8Array; readonly queue: Int32Array; readonly inside: boolean },
): number {
  let count = 1;
  queue[0] = start;
  seen[start] = 1;
  const visit = (at: number): void => {
    if (seen[at] === 1 || values[at]! >= 0 !== inside) return;
    seen[at] = 1;
    queue[count] = at;
    count += 1;
  };
  for (let next = 0; next < count; next += 1) {
    const at = queue[next]!;
    const x = at % width;
    const [left, right, up, down] = [x > 0, x < width - 1, at >= width, at < width * (height - 1)];
    if (left) visit(at - 1);
    if (right) visit(at + 1);
    if (up) visit(at - width);
    if (down) visit(at + width);
    if (inside) continue;
    if (up && left) visit(at - width - 1);
    if (up && right) visit(at - width + 1);
    if (down && left) visit(at + width - 1);
    if (down && right) visit(at + width + 1);
  }
  return count;
}

/** Sides between pixels inside and pixels outside. */
export function sidesOf({ width, height, values }: Field): number {
  let sides = 0;
  for (let at = 0; at < values.length; at += 1) {
    const inside = values[at]! >= 0;
    if (at % width < width - 1 && values[at + 1]! >= 0 !== inside) sides += 1;
    if (at < width * (height - 1) && values[at + width]! >= 0 !== inside) sides += 1;
  }
  return sides;
}
