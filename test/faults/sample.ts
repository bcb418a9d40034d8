/** At most `most` of a list, in its order: the same ones for the same seed, as evenly spread as a draw is. */
export function sample<T>(list: readonly T[], most: number, seed: number): readonly T[] {
  const random = mulberry(seed);
  const drawn = list.map((_, index) => ({ index, draw: random() })).toSorted((a, b) => a.draw - b.draw);
  const taken = new Set(drawn.slice(0, most).map(({ index }) => index));
  return list.filter((_, index) => taken.has(index));
}

/** Numbers from 0 to 1 that look random. Source: Tommy Ettinger's public-domain generator mulberry32, from memory. */
function mulberry(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
