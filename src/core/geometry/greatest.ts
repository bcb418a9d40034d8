/** Golden section, the share by which each step narrows the interval. */
const SECTION = (Math.sqrt(5) - 1) / 2;

/** Where a function with one hump between `low` and `high` is greatest, to 1e-9 of the interval. */
export function greatest(of: (value: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  let [left, right] = [to - SECTION * (to - from), from + SECTION * (to - from)];
  let [atLeft, atRight] = [of(left), of(right)];
  while (to - from > (high - low) * 1e-9) {
    if (atLeft < atRight) {
      from = left;
      [left, atLeft] = [right, atRight];
      right = from + SECTION * (to - from);
      atRight = of(right);
    } else {
      to = right;
      [right, atRight] = [left, atLeft];
      left = to - SECTION * (to - from);
      atLeft = of(left);
    }
  }
  return (from + to) / 2;
}
