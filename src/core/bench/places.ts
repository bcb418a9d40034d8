import type { LeafNumber } from "../book/leaf-number.ts";
import type { BenchItem } from "./bench-item.ts";
import type { OtherWork } from "./beside-leaves.ts";

/** What lies on the bench: a leaf to fold, or other work that stands beside that leaf. */
export interface Place {
  readonly leaf: LeafNumber;
  readonly item: BenchItem | undefined;
}

/** Everything that comes under the hand, in order: what comes before the first leaf, and each leaf with what comes after it. */
export function placesOf(stops: readonly LeafNumber[], { beforeFirst, after }: OtherWork): Place[] {
  const beside = (leaf: LeafNumber, items: readonly BenchItem[]): Place[] => items.map((item) => ({ leaf, item }));
  return [
    ...beside(stops[0]!, beforeFirst),
    ...stops.flatMap((leaf) => [{ leaf, item: undefined }, ...beside(leaf, after.get(leaf) ?? [])]),
  ];
}
