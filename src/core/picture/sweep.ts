import type { CrossedSides } from "./crossed-sides.ts";

/**
 * Goes from line to line with the sides that each line meets, from the top. They stay in order but where sides cross, end or
 * begin, so little is left to sort. `visit` is given the sides, and where each side is met.
 */
export function sweep(
  { begun, ends, figures }: CrossedSides,
  lines: Float64Array,
  visit: (line: number, met: Int32Array, at: Float64Array) => void,
): void {
  const [at, met] = [new Float64Array(ends.length), new Int32Array(ends.length)];
  let before = 0;
  for (let line = 0; line < lines.length; line += 1) {
    const [x, first] = [lines[line]!, begun[line]!];
    let [last, sorted, count] = [Number.NEGATIVE_INFINITY, true, 0];
    for (let i = 0; i < before + first.length; i += 1) {
      const side = i < before ? met[i]! : first[i - before]!;
      if (ends[side]! <= line) continue;
      const k = 4 * side;
      const y = figures[k + 1]! + ((x - figures[k]!) / figures[k + 2]!) * figures[k + 3]!;
      at[side] = y;
      met[count] = side;
      count += 1;
      sorted &&= last <= y;
      last = y;
    }
    const here = met.subarray(0, count);
    if (!sorted) here.sort((a, b) => at[a]! - at[b]!);
    visit(line, here, at);
    before = count;
  }
}
