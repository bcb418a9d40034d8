import type { FrontCurve } from "../fan/front-curve.ts";
import { type Area, grow, intersect, outlinesOf, sizeOf, subtract, unite } from "../geometry/area.ts";
import { thinOut } from "../geometry/simplify.ts";
import type { Pocket } from "../light/light.ts";
import { lightCover } from "./light-cover.ts";
import { type MotifPart, setOutlines } from "./motif.ts";
import type { BookWindow } from "./window.ts";

/** What is wrong with a motif, or with the cover of the light. `motif` is its place in the kit's list, from 0; lengths mm. */
export type MotifFault =
  /** Pieces that touch neither each other nor card that they could be glued to. */
  | { readonly kind: "loose"; readonly motif: number; readonly pieces: number }
  /** Nothing of it lies on the window. */
  | { readonly kind: "off-window"; readonly motif: number }
  | { readonly kind: "beyond-frame"; readonly motif: number; readonly by: number }
  | { readonly kind: "overlap"; readonly motif: number; readonly other: number }
  /** Falls apart where it is narrower than `least`. */
  | { readonly kind: "narrow"; readonly motif: number; readonly least: number }
  | { readonly kind: "light-shows"; readonly beside: number; readonly through: number };

/** The narrowest strip of card that a knife leaves whole, mm (common practice, no source). */
const LEAST_STRIP = 0.8;

/** Areas under this are not seen, mm². */
const UNSEEN = 0.5;

/** How far a motif may reach beyond the frame before it is told, mm. */
const BEYOND = 0.25;

/** How exactly it is told by how much, mm. */
const EXACT = 0.1;

/** Shares of the light under this do not matter. */
const LITTLE = 0.02;

/** What is to be told of a window's motifs in the order of the kit, the light last. */
export function motifFaults(window: BookWindow, pocket: Pocket | undefined, curve: FrontCurve): MotifFault[] {
  const placed = window.motifs.map(setOutlines);
  const face = thinOut(outlinesOf(window.frame.outlines).outer, EXACT / 4);
  const ofMotifs = window.motifs.flatMap((_, i): MotifFault[] => {
    const fault = placeFault(i, placed[i]!, face);
    if (fault?.kind === "off-window") return [fault];
    const pieces = loosePieces(i, placed, window);
    return [
      ...(pieces > 0 ? [{ kind: "loose", motif: i, pieces } as const] : []),
      ...(fault ? [fault] : []),
      ...overlaps(i, placed, window.motifs),
      ...(fallsApart(placed[i]!) ? [{ kind: "narrow", motif: i, least: LEAST_STRIP } as const] : []),
    ];
  });
  return [...ofMotifs, ...lightFault(window, pocket, curve)];
}

function placeFault(motif: number, area: Area, face: Area): MotifFault | undefined {
  if (sizeOf(subtract(area, face)) < UNSEEN) return undefined;
  if (sizeOf(intersect(area, face)) < UNSEEN) return { kind: "off-window", motif };
  const inside = (by: number): boolean => sizeOf(subtract(area, grow(face, by))) < UNSEEN;
  if (inside(BEYOND)) return undefined;
  let most = 2 * BEYOND;
  while (!inside(most)) most *= 2;
  return { kind: "beyond-frame", motif, by: leastThat(most / 2, most, inside) };
}

/** The least of some lengths that does, between one that does not and one that does. */
function leastThat(low: number, high: number, does: (value: number) => boolean): number {
  if (high - low < EXACT) return high;
  const middle = (low + high) / 2;
  return does(middle) ? leastThat(low, middle, does) : leastThat(middle, high, does);
}

/** A motif in several pieces: each must lie on the frame, or on a motif that stands lower. */
function loosePieces(i: number, placed: readonly Area[], { frame, motifs }: BookWindow): number {
  const pieces = outlinesOf(placed[i]!).outer;
  if (pieces.length === 1) return 0;
  const lower = placed.filter((_, other) => motifs[other]!.spacers < motifs[i]!.spacers);
  const under = lower.reduce<Area>(unite, frame.outlines);
  return pieces.filter((piece) => sizeOf(intersect([piece], under)) < UNSEEN).length;
}

function overlaps(i: number, placed: readonly Area[], motifs: readonly MotifPart[]): MotifFault[] {
  const others = placed.slice(0, i).flatMap((area, other) => {
    const level = motifs[other]!.spacers === motifs[i]!.spacers;
    return level && sizeOf(intersect(area, placed[i]!)) >= UNSEEN ? [other] : [];
  });
  return others.map((other) => ({ kind: "overlap", motif: i, other }));
}

function fallsApart(area: Area): boolean {
  const left = outlinesOf(grow(area, -LEAST_STRIP / 2)).outer.filter((ring) => sizeOf([ring]) > UNSEEN);
  return left.length !== outlinesOf(area).outer.length;
}

function lightFault(window: BookWindow, pocket: Pocket | undefined, curve: FrontCurve): MotifFault[] {
  if (!pocket) return [];
  const { beside, through } = lightCover(window, pocket, curve);
  return beside < LITTLE ? [] : [{ kind: "light-shows", beside, through }];
}
