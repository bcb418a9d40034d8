/**
 * The limits that divide a histogram into `classes` so that values differ as little as possible within each: Otsu's method
 * (IEEE Transactions on Systems, Man, and Cybernetics 9, 1979), for any number of classes. A class ends with its limit, which
 * belongs to it; of equally good limits the lowest come out. Exact, by dynamic programming over the bins.
 *
 * @param histogram how often each value 0, 1, 2 … occurs; whole numbers
 * @returns `classes` − 1 limits, ascending; undefined where fewer values than classes occur
 */
export function otsuLimits(histogram: ArrayLike<number>, classes: number): number[] | undefined {
  if (distinctValues(histogram) < classes) return undefined;
  const spread = spreadOf(histogram);
  const bins = histogram.length;
  let least = Float64Array.from({ length: bins }, (_, last) => spread(0, last));
  const begins: Int32Array[] = [];
  for (let k = 1; k < classes; k += 1) {
    const { costs, begin } = oneMore(least, k, spread);
    begins.push(begin);
    least = costs;
  }
  const limits: number[] = [];
  for (let last = bins - 1; begins.length > 0; ) {
    last = begins.pop()![last]! - 1;
    limits.unshift(last);
  }
  return limits;
}

/** How many values occur. */
export function distinctValues(histogram: ArrayLike<number>): number {
  return Array.from(histogram).filter((count) => count > 0).length;
}

/** The mean of the values first…last, both included, and how many there are. */
export function meanOf(
  histogram: ArrayLike<number>,
  first: number,
  last: number,
): { readonly count: number; readonly mean: number } {
  let count = 0;
  let sum = 0;
  for (let value = first; value <= last; value += 1) {
    count += histogram[value]!;
    sum += value * histogram[value]!;
  }
  return { count, mean: count > 0 ? sum / count : Number.NaN };
}

/** Sum of squared distances from the mean within the values first…last; infinite where none of them occurs, as no class is empty. */
type Spread = (first: number, last: number) => number;

function spreadOf(histogram: ArrayLike<number>): Spread {
  const sums = [0, 1, 2].map((power) => {
    const upTo = new Float64Array(histogram.length + 1);
    for (let value = 0; value < histogram.length; value += 1)
      upTo[value + 1] = upTo[value]! + histogram[value]! * value ** power;
    return upTo;
  });
  const [counts, values, squares] = sums as [Float64Array, Float64Array, Float64Array];
  return (first, last) => {
    const count = counts[last + 1]! - counts[first]!;
    if (count === 0) return Number.POSITIVE_INFINITY;
    const sum = values[last + 1]! - values[first]!;
    return squares[last + 1]! - squares[first]! - (sum * sum) / count;
  };
}

/** The least spread of the values 0…last in one class more than `least` counts, and where its last class begins. */
function oneMore(
  least: Float64Array,
  k: number,
  spread: Spread,
): { costs: Float64Array<ArrayBuffer>; begin: Int32Array } {
  const bins = least.length;
  const costs = new Float64Array(bins).fill(Number.POSITIVE_INFINITY);
  const begin = new Int32Array(bins);
  for (let last = k; last < bins; last += 1) {
    for (let first = k; first <= last; first += 1) {
      const cost = least[first - 1]! + spread(first, last);
      if (cost < costs[last]!) {
        costs[last] = cost;
        begin[last] = first;
      }
    }
  }
  return { costs, begin };
}
