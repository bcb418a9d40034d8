/** Labels that were pushed against each other and share their shift. */
interface Block {
  readonly count: number;
  /** Sum of the wished places, each less its distance from the block's first label. */
  readonly wish: number;
  readonly first: number;
}

/**
 * Places for labels on a line so that neighbours are at least `gap` apart and none leaves `from` … `to`, as near to their
 * wished places (increasing) as the sum of squares allows. Where they do not all fit they stand evenly over the whole line.
 */
export function placeLabels(wished: readonly number[], gap: number, from: number, to: number): number[] {
  const count = wished.length;
  if (count > 1 && gap * (count - 1) > to - from) return wished.map((_, i) => from + ((to - from) * i) / (count - 1));
  const blocks: Block[] = [];
  for (const place of wished) {
    let block: Block = { count: 1, wish: place, first: clamp(place, from, to) };
    for (;;) {
      const last = blocks.at(-1);
      if (!last || last.first + last.count * gap <= block.first + 1e-9) break;
      blocks.pop();
      block = join(last, block, gap, from, to);
    }
    blocks.push(block);
  }
  return blocks.flatMap((block) => Array.from({ length: block.count }, (_, i) => block.first + i * gap));
}

function join(a: Block, b: Block, gap: number, from: number, to: number): Block {
  const count = a.count + b.count;
  const wish = a.wish + b.wish - b.count * a.count * gap;
  return { count, wish, first: clamp(wish / count, from, to - (count - 1) * gap) };
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), Math.max(least, most));
}
