import type { Area } from "../../core/geometry/area.ts";
import { packRings, unpackRings } from "./packed-rings.ts";
import type { RoundCorners, RoundData, RoundSpan } from "./round-data.ts";

/** A leaf as it is packed: its number, where its first span begins, then of each span its end and its level. */
type PackedLeaf = readonly [leaf: number, from: number, ...spans: number[]];

/** One whose corners are folded: its number, and they. */
type PackedCorners = { readonly l: number; readonly c: RoundCorners };

/**
 * A classic script that hands the data of the turning view over: unlike a fetch, it also loads from a page opened from the disk.
 * Leaves and outlines are packed; the script unpacks them, so that its readers need not know.
 */
export function roundScript(data: RoundData): string {
  const leaves = data.leaves.map(({ leaf, spans, corners }): PackedLeaf | PackedCorners =>
    corners ? { l: leaf, c: corners } : [leaf, spans[0]?.from ?? 0, ...spans.flatMap(({ to, level }) => [to, level])],
  );
  const parts = data.insert?.parts.map((part) => ({ ...part, outlines: packRings(part.outlines) }));
  const packed = { ...data, leaves, ...(data.insert ? { insert: { ...data.insert, parts } } : {}) };
  return `(globalThis.leaflightRound??={}).data=(${unpackRound})(${JSON.stringify(packed)},${unpackRings});\n`;
}

/** As the data was packed, outlines in the places of packed ones. */
interface PackedRound {
  leaves: readonly (PackedLeaf | PackedCorners)[] | RoundData["leaves"];
  readonly insert?: { readonly parts: { outlines: Area }[] };
}

/** Written into the script as it stands here. */
function unpackRound(data: PackedRound, unpack: typeof unpackRings): PackedRound {
  for (const part of data.insert?.parts ?? []) part.outlines = unpack(part.outlines);
  data.leaves = (data.leaves as readonly (PackedLeaf | PackedCorners)[]).map((packed) => {
    if ("c" in packed) return { leaf: packed.l, spans: [], corners: packed.c };
    const [leaf, start, ...ends] = packed;
    const spans: RoundSpan[] = [];
    for (let i = 0; i < ends.length; i += 2)
      spans.push({ from: i === 0 ? start : ends[i - 2]!, to: ends[i]!, level: ends[i + 1]! });
    return { leaf, spans };
  });
  return data;
}
