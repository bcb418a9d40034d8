import { createHash } from "node:crypto";

/** One of several parts of equal size that all kits of a site are dealt to, counted from 1. */
export interface Shard {
  readonly number: number;
  readonly of: number;
}

/**
 * The names that are dealt to a shard. All names stand in a row by their hashes, and the row is cut into pieces of equal length:
 * sizes differ by one at most, names that are alike (and kits that take equally long) are spread, and where a name is added or
 * taken away, fewer others change their shard than there are shards. So what a machine kept of its shard stays of use.
 */
export function dealtTo({ number, of }: Shard, names: readonly string[]): string[] {
  const row = names.map((name) => ({ name, hash: hashOf(name) })).toSorted((a, b) => (a.hash < b.hash ? -1 : 1));
  const cut = (after: number): number => Math.floor((after * row.length) / of);
  return row.slice(cut(number - 1), cut(number)).map(({ name }) => name);
}

function hashOf(name: string): string {
  return createHash("sha256").update(name).digest("hex");
}
