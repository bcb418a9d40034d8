import { caliper } from "../book/book.ts";
import { leafNumber } from "../book/leaf-number.ts";
import { nearestCount } from "../geometry/nearest.ts";
import type { Kit } from "../kit/kit.ts";
import type { Change, Fits } from "./offer.ts";
import type { Refit } from "./refit.ts";

/** Books that people find: leaves, and how thick they are, mm (common practice, no source). */
const USUAL = { leaves: { least: 20, most: 450 }, thickness: { least: 3, most: 60 } } as const;

/** Another book of the same paper and size: the nearest counts of leaves, more or fewer, with which the kit fits. */
export function bookOffers(kit: Kit, fits: Fits): Change[] {
  const { leaves } = kit.book;
  const { leaves: usual, thickness } = USUAL;
  const most = Math.min(usual.most, Math.floor(thickness.most / caliper(kit.book)));
  const least = Math.max(usual.least, Math.ceil(thickness.least / caliper(kit.book)));
  const more = nearestCount(leaves, 1, most, (count) => fits(bookOf(kit, count)));
  const fewer = nearestCount(leaves, -1, least, (count) => fits(bookOf(kit, count)));
  return [
    ...(more === undefined ? [] : [offer(kit, more, "least")]),
    ...(fewer === undefined ? [] : [offer(kit, fewer, "most")]),
  ];
}

function offer(kit: Kit, leaves: number, bound: "least" | "most"): Change {
  const thickness = leaves * caliper(kit.book);
  return { says: [{ kind: "book", bound, leaves, thickness }], change: bookOf(kit, leaves) };
}

/** As thick as the leaves make it; its page numbers are not known, so it counts from its first leaf to its last. */
function bookOf(kit: Kit, leaves: number): Partial<Refit> {
  return {
    leaves,
    blockThickness: leaves * caliper(kit.book),
    pageOneLeaf: leafNumber(1),
    lastPage: 2 * leaves,
    plates: [],
  };
}
