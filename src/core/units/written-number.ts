/**
 * A number as people write it, with a point or a comma; NaN where the text is anything else: `Number` would also take `0x10`,
 * `1e3` and nothing at all.
 */
export function readNumber(text: string): number {
  const plain = text.trim().replace(",", ".");
  return /^(\d+\.?\d*|\.\d+)$/.test(plain) ? Number(plain) : Number.NaN;
}
