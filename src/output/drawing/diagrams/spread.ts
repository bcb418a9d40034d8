/**
 * Moves places apart along a line, in order, so that neighbours stand at least `apart` from each other between `from` and
 * `to`; closer only where there is no room for that. Each stays as near to where it was as the ones before it let it.
 */
export function spreadOut(places: readonly number[], apart: number, from: number, to: number): number[] {
  const room = places.length > 1 ? Math.min(apart, (to - from) / (places.length - 1)) : apart;
  const spread = [...places];
  let least = from;
  for (let i = 0; i < spread.length; i += 1) {
    spread[i] = Math.max(spread[i]!, least);
    least = spread[i]! + room;
  }
  let most = to;
  for (let i = spread.length - 1; i >= 0; i -= 1) {
    spread[i] = Math.min(spread[i]!, most);
    most = spread[i]! - room;
  }
  return spread;
}
