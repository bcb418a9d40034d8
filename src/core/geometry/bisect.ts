/**
 * The root of an increasing function on [low, high], by bisection to the last bit that matters.
 * The caller has checked that `f(low) ≤ target ≤ f(high)`.
 */
export function bisect(f: (value: number) => number, target: number, low: number, high: number): number {
  let below = low;
  let above = high;
  for (let step = 0; step < 80; step += 1) {
    const middle = (below + above) / 2;
    if (f(middle) < target) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
