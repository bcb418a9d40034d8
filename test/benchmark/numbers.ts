/** The middle of some figures, and the greatest. */
export function middleAndMost(figures: readonly number[]): { readonly median: number; readonly worst: number } {
  const sorted = figures.toSorted((a, b) => a - b);
  return { median: sorted[Math.floor(sorted.length / 2)] ?? Number.NaN, worst: sorted.at(-1) ?? Number.NaN };
}
