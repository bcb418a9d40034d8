import { sortPairs } from "../geometry/sort-pairs.ts";
import type { CrossedSides } from "./crossed-sides.ts";

/**
 * Goes from line to line with the sides that each line meets, from the top. They stay in order but where sides cross, end or
 * begin, so little is left to sort. `visit` is told how many there are, and finds in two lists where each is met and which it is.
 */
export function sweep(
  { starts, ends, figures }: CrossedSides,
  lines: Float64Array,
  visit: (line: number, count: number, at: Float64Array, met: Int32Array) => void,
): void {
  const [at, met] = [new Float64Array(ends.length), new Int32Array(ends.length)];
  let count = 0;
  for (let line = 0; line < lines.length; line += 1) {
    const [x, before] = [lines[line]!, count];
    let [last, sorted] = [Number.NEGATIVE_INFINITY, true];
    count = 0;
    const begun = starts[line]! - before;
    for (let i = 0; i < before + starts[line + 1]! - starts[line]!; i += 1) {
      const side = i < before ? met[i]! : begun + i;
      if (ends[side]! <= line) continue;
      const y = figures[4 * side + 1]! + ((x - figures[4 * side]!) / figures[4 * side + 2]!) * figures[4 * side + 3]!;
      at[count] = y;
      met[count] = side;
      count += 1;
      sorted &&= last <= y;
      last = y;
    }
    if (!sorted) sortPairs(at, met, count);
    visit(line, count, at, met);
  }
}
