/** So many are sorted by inserting each; more of them are merged from such blocks. */
const BLOCK = 16;

/** Sorts the first keys, from the least, and what belongs to each with it; equal ones keep their order. Keys that are nearly sorted take least time. */
export function sortPairs(keys: Float64Array, values: Int32Array, count: number): void {
  for (let block = 0; block < count; block += BLOCK) insertEach(keys, values, block, Math.min(block + BLOCK, count));
  for (let length = BLOCK; length < count; length *= 2)
    for (let left = 0; left + length < count; left += 2 * length)
      mergeBlocks(keys, values, left, left + length, Math.min(left + 2 * length, count));
}

function insertEach(keys: Float64Array, values: Int32Array, from: number, end: number): void {
  for (let i = from + 1; i < end; i += 1) {
    const [key, value] = [keys[i]!, values[i]!];
    let at = i;
    for (; at > from && keys[at - 1]! > key; at -= 1) {
      keys[at] = keys[at - 1]!;
      values[at] = values[at - 1]!;
    }
    keys[at] = key;
    values[at] = value;
  }
}

/** Merges two neighbouring blocks; of the left one that part is laid aside which does not stay where it is. */
function mergeBlocks(keys: Float64Array, values: Int32Array, from: number, middle: number, end: number): void {
  let at = middle;
  while (at > from && keys[at - 1]! > keys[middle]!) at -= 1;
  if (at === middle) return;
  const [leftKeys, leftValues] = [keys.slice(at, middle), values.slice(at, middle)];
  let [left, right] = [0, middle];
  for (; left < leftKeys.length; at += 1) {
    const fromRight = right < end && keys[right]! < leftKeys[left]!;
    keys[at] = fromRight ? keys[right]! : leftKeys[left]!;
    values[at] = fromRight ? values[right]! : leftValues[left]!;
    if (fromRight) right += 1;
    else left += 1;
  }
}
