/**
 * The whole number nearest to `start` that is allowed, going by `way` (1 or −1) until `end`; undefined where none is found.
 * Steps grow by a tenth, and the edge that was stepped over is then found exactly: one less of the way is not allowed.
 */
export function nearestCount(
  start: number,
  way: 1 | -1,
  end: number,
  allowed: (count: number) => boolean,
): number | undefined {
  let before = start;
  for (let gone = 1; gone <= Math.abs(end - start); gone = Math.max(gone + 1, Math.floor(gone * 1.1))) {
    const count = start + way * gone;
    if (allowed(count)) return edge(before, count, allowed);
    before = count;
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
