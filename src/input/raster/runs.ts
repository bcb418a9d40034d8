/** Pixels in rows; a value of 0 or more lies inside the area, and the outline is where it would be 0. */
export interface Field {
  readonly width: number;
  readonly height: number;
  readonly values: Float32Array;
}

/** The runs of pixels on one side of the outline, row by row from the top, each from the left. */
export interface Runs {
  /** The first pixel of each run, and the one behind its last, counted through the rows. */
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** The first run of each row, and behind the last row the number of all. */
  readonly first: Int32Array;
}

/** The runs inside an area, or those outside it. */
export function runsOf({ width, height, values }: Field, inside: boolean): Runs {
  const first = new Int32Array(height + 1);
  const begins = (at: number, x: number): boolean =>
    values[at]! >= 0 === inside && (x === 0 || values[at - 1]! >= 0 !== inside);
  for (let y = 0, at = 0; y < height; y += 1) {
    first[y + 1] = first[y]!;
    for (let x = 0; x < width; x += 1, at += 1) if (begins(at, x)) first[y + 1]! += 1;
  }
  const from = new Int32Array(first[height]!);
  const to = new Int32Array(first[height]!);
  for (let y = 0, at = 0, run = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1, at += 1) {
      if (!begins(at, x)) continue;
      from[run] = at;
      while (x + 1 < width && values[at + 1]! >= 0 === inside) [x, at] = [x + 1, at + 1];
      to[run] = at + 1;
      run += 1;
    }
  }
  return { from, to, first };
}

/** Of each run, the number of one run of its part. Runs of neighbour rows touch by a side, or also by a corner. */
export function joinRuns({ from, to, first }: Runs, width: number, byCorner: boolean): Int32Array {
  const part = Int32Array.from({ length: from.length }, (_, run) => run);
  const rootOf = (run: number): number => {
    let root = run;
    while (part[root]! !== root) {
      part[root] = part[part[root]!]!;
      root = part[root]!;
    }
    return root;
  };
  const reach = byCorner ? 1 : 0;
  for (let y = 1; y + 1 < first.length; y += 1) {
    let above = first[y - 1]!;
    for (let run = first[y]!; run < first[y + 1]!; run += 1) {
      while (above < first[y]! && to[above]! + width + reach <= from[run]!) above += 1;
      for (let next = above; next < first[y]! && from[next]! + width < to[run]! + reach; next += 1)
        part[rootOf(run)] = rootOf(next);
    }
  }
  for (let run = 0; run < part.length; run += 1) part[run] = rootOf(run);
  return part;
}
