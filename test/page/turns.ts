/** Runs in the page: how long a turn of a loop takes, ms, fifteen times; about as long as a computation at the key. */
export function timeTurns(): number[] {
  return Array.from({ length: 15 }, () => {
    const start = performance.now();
    let sum = 0;
    for (let i = 1; i < 400_000; i += 1) sum += Math.sin(i) / Math.sqrt(i);
    return performance.now() - start + (Number.isNaN(sum) ? 1 : 0);
  });
}
