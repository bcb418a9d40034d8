import type { Pattern, PatternLeaf } from "../pattern/pattern.ts";
import type { Tack } from "../spans/tacks.ts";

/** A tack that is worth its glue. */
export interface GluedTack extends Tack {
  readonly leaf: PatternLeaf;
}

/**
 * The tacks to glue: those at least as long as the least tab. A shorter free stretch is held by the rest of its own flap;
 * `held` counts them.
 */
export function tackList(pattern: Pattern): { readonly glued: readonly GluedTack[]; readonly held: number } {
  const all = pattern.leaves.flatMap((leaf) => leaf.tacks.map((tack) => ({ ...tack, leaf })));
  const glued = all.filter((tack) => tack.to - tack.from >= pattern.fit.leastTab - 1e-6);
  return { glued, held: all.length - glued.length };
}
