import type { CrossedSides } from "./crossed-sides.ts";

/** So many steps for each side that is put in its place are quicker than to sort them all anew. */
const STEPS = 24;

/** In the place of its first line: the side has its place already. */
const PLACED = -1;

/**
 * Goes from line to line with the sides that each line meets, from the top, once. They stay in order but where sides cross, end
 * or begin, so each is put in its place from below. `visit` is given the sides, where each is met, and how many there are.
 */
export function sweep(
  { begun, earlier, starts, ends, owners, figures }: CrossedSides,
  lines: Float64Array,
  visit: (line: number, met: Int32Array, at: Float64Array, count: number) => void,
): void {
  const [met, at] = [new Int32Array(ends.length), new Float64Array(ends.length)];
  let before = 0;
  for (let line = 0; line < lines.length; line += 1) {
    const x = lines[line]!;
    let count = 0;
    let steps = STEPS * (before + 1);
    let sorted = true;
    let old = 0;
    let begins = begun[line]!;
    while (old < before || begins >= 0) {
      let side = begins;
      if (old < before) {
        side = met[old]!;
        old += 1;
        if (ends[side]! <= line) {
          // Where the outline goes on it is met near by.
          const next = (owners[side]! & 1) === 1 ? side + 1 : side - 1;
          if (next < 0 || starts[next] !== line) continue;
          starts[next] = PLACED;
          side = next;
        }
      } else {
        begins = earlier[begins]!;
        if (starts[side] === PLACED) continue;
        steps += STEPS;
      }
      const k = 4 * side;
      const y = figures[k + 1]! + ((x - figures[k]!) / figures[k + 2]!) * figures[k + 3]!;
      let place = count;
      for (; place > 0 && at[place - 1]! > y && steps > 0; place -= 1) {
        met[place] = met[place - 1]!;
        at[place] = at[place - 1]!;
        steps -= 1;
      }
      sorted &&= place === 0 || at[place - 1]! <= y;
      met[place] = side;
      at[place] = y;
      count += 1;
    }
    if (!sorted) sortBoth(met, at, count);
    visit(line, met, at, count);
    before = count;
  }
}

/** Puts the first sides in the order in which they are met. */
function sortBoth(met: Int32Array, at: Float64Array, count: number): void {
  const [sides, places] = [met.slice(0, count), at.slice(0, count)];
  const order = Int32Array.from(sides.keys()).sort((a, b) => places[a]! - places[b]!);
  for (const [i, one] of order.entries()) {
    met[i] = sides[one]!;
    at[i] = places[one]!;
  }
}
