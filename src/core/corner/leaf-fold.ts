import type { EmptyFold } from "../kit/corner-wish.ts";
import type { Span } from "../spans/span.ts";
import { type Crease, type CreaseRoom, creaseAt, flapOf, type LeafPoint } from "./crease.ts";

/** A stretch of the fore-edge that stays unfolded, mm from the head. */
export type Shown = Omit<Span, "level">;

/** Which of the picture's stretches a leaf shows, counted from the head; the others are shown by its neighbours. */
export interface Turn {
  readonly which: number;
  readonly of: number;
}

/** How one leaf is folded without a cut. */
export type LeafFold =
  | {
      /** A stretch of the picture stays, and the corners beside it are folded over. */
      readonly kind: "corners";
      readonly shown: Shown;
      readonly creases: readonly Crease[];
      /** Null where the leaf meets the picture once. */
      readonly turn: Turn | null;
    }
  | { readonly kind: "straight"; readonly depth: number }
  | { readonly kind: "middle"; readonly at: number; readonly creases: readonly Crease[] };

/** A leaf that shows a stretch: at most two creases, none where the stretch reaches the edge. */
export function foldCorners(shown: Shown, turn: Turn | null, room: CreaseRoom): LeafFold {
  return { kind: "corners", shown, turn, creases: creasesAt(shown.from, shown.to, room) };
}

/** A leaf that shows nothing. `line` is the background's depth, mm. */
export function foldEmpty(empty: EmptyFold, line: number, room: CreaseRoom): LeafFold {
  if (empty === "line") return { kind: "straight", depth: line };
  if (empty === "half") return { kind: "straight", depth: Math.floor(room.reach / 2 / room.step + 1e-9) * room.step };
  const at = Math.round(room.leafHeight / 2 / room.step) * room.step;
  return { kind: "middle", at, creases: creasesAt(at, at, room) };
}

function creasesAt(from: number, to: number, room: CreaseRoom): Crease[] {
  return [creaseAt(from, "head", room), creaseAt(to, "tail", room)].filter((crease) => crease !== undefined);
}

/** The creases of a leaf; a straight fold is none. */
export function creasesOf(fold: LeafFold): readonly Crease[] {
  return fold.kind === "straight" ? [] : fold.creases;
}

/** How far inward of the fore-edge a folded leaf begins at a height, mm. */
export function depthAt(fold: LeafFold, height: number): number {
  if (fold.kind === "straight") return fold.depth;
  for (const { corner, from, to } of fold.creases) {
    const beyond = corner === "head" ? from.at - height : height - from.at;
    if (beyond > 0) return (beyond / Math.abs(from.at - to.at)) * to.depth;
  }
  return 0;
}

/** A flap as it lies on its leaf: a strip over all of the leaf's height, depths from the fore-edge, or a folded corner. */
export type Flap = readonly [from: number, to: number] | readonly [LeafPoint, LeafPoint, LeafPoint];

/** What lies folded over on a leaf. */
export function flapsOf(fold: LeafFold): readonly Flap[] {
  return fold.kind === "straight" ? [[fold.depth, 2 * fold.depth]] : fold.creases.map(flapOf);
}

/** The stretch of depths at which a flap lies at a height, mm from the fore-edge; undefined where it does not reach there. */
export function lyingAt(flap: Flap, height: number): readonly [from: number, to: number] | undefined {
  if (flap.length === 2) return flap;
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < 3; i += 1) {
    const a = flap[i]!;
    const b = flap[(i + 1) % 3]!;
    if (a.at > height === b.at > height) continue;
    const depth = a.depth + ((height - a.at) / (b.at - a.at)) * (b.depth - a.depth);
    least = Math.min(least, depth);
    most = Math.max(most, depth);
  }
  return least < most ? [least, most] : undefined;
}
