/** Keeps the greatest of some numbers from 0 at hand while they come and go: a bit for each. Gives what puts one in or takes it out, and tells the greatest then; −1 where there is none. */
export function keepUppermost(count: number): (one: number, isThere: boolean) => number {
  const bits = new Int32Array((count + 31) >> 5);
  let greatest = -1;
  const next = (from: number): number => {
    let word = from;
    while (word >= 0 && bits[word] === 0) word -= 1;
    return word < 0 ? -1 : 32 * word + 31 - Math.clz32(bits[word]!);
  };
  return (one, isThere) => {
    const word = one >> 5;
    const bit = 1 << (one & 31);
    if (isThere) {
      bits[word]! |= bit;
      if (one > greatest) greatest = one;
    } else {
      bits[word]! &= ~bit;
      if (one === greatest) greatest = next(word);
    }
    return greatest;
  };
}
