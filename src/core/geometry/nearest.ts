/**
 * The whole number nearest to `start` that is allowed, going by `way` (1 or −1) until `end`, which is asked for last;
 * undefined where none is found, or where `end` lies the other way. Steps grow by a tenth, and the edge that was stepped
 * over is then found exactly: one less of the way is not allowed.
 */
export function nearestCount(
  start: number,
  way: 1 | -1,
  end: number,
  allowed: (count: number) => boolean,
): number | undefined {
  const furthest = way * (end - start);
  let gone = 0;
  while (gone < furthest) {
    const before = gone;
    gone = Math.min(furthest, Math.max(gone + 1, Math.floor(gone * 1.1)));
    if (allowed(start + way * gone)) return edge(start + way * before, start + way * gone, allowed);
  }
  return undefined;
}

function edge(outside: number, inside: number, allowed: (count: number) => boolean): number {
  let [no, yes] = [outside, inside];
  while (Math.abs(yes - no) > 1) {
    const middle = Math.round((no + yes) / 2);
    if (allowed(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
