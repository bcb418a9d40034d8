import type { Doubt } from "../findings/doubt.ts";
import type { Kit } from "../kit/kit.ts";
import type { CornerPattern } from "./corner-pattern.ts";
import { bookDoubts, centreDoubt, mergedDoubt, shapeDoubts } from "./doubts.ts";

/** What can be folded by corners but may disappoint, the graver things first. */
export function cornerDoubts(kit: Kit, pattern: CornerPattern): Doubt[] {
  const found = [
    ...bookDoubts(kit),
    ...shapeDoubts(pattern),
    stripedDoubt(pattern),
    droppedDoubt(pattern),
    leftOutDoubt(pattern),
    ...turnDoubts(pattern),
    steepDoubt(kit, pattern),
    mergedDoubt(kit, pattern),
    centreDoubt(kit, pattern),
  ];
  return found.filter((doubt) => doubt !== undefined);
}

function droppedDoubt({ corner: { dropped } }: CornerPattern): Doubt | undefined {
  if (dropped.length === 0) return undefined;
  return { kind: "left-without-knife", light: dropped.includes("light"), window: dropped.includes("window") };
}

function leftOutDoubt({ corner: { leftOut } }: CornerPattern): Doubt | undefined {
  return leftOut.length === 0 ? undefined : { kind: "levels-left-out", levels: leftOut };
}

/** Above this share of leaves that take turns, less than about nine tenths of the outline is seen; measured on demo kits and silhouettes of the tests. */
const MOST_TURNS = 1 / 2;

function stripedDoubt({ fit, corner: { turns } }: CornerPattern): Doubt | undefined {
  const of = fit.lastLeaf - fit.firstLeaf + 1;
  return turns.leaves > MOST_TURNS * of ? { kind: "striped", leaves: turns.leaves, of } : undefined;
}

function turnDoubts({
  corner: {
    turns: { leaves, most, every, unseen },
  },
}: CornerPattern): Doubt[] {
  return [
    ...(leaves === 0 ? [] : [{ kind: "turns", leaves, most, every } as const]),
    ...(unseen === 0 ? [] : [{ kind: "unseen-parts", parts: unseen } as const]),
  ];
}

function steepDoubt({ book, fit }: Kit, { corner: { turned } }: CornerPattern): Doubt | undefined {
  if (turned === 0) return undefined;
  return { kind: "steep-creases", leaves: turned, reach: book.leafWidth - fit.gutterClearance };
}
