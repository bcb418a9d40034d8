/** How cut leaves are folded: each span once from flat at its own line, or the whole leaf at the front line first and deeper spans again. */
export const KNIFE_STYLES = ["single", "stepped"] as const;

export type KnifeStyle = (typeof KNIFE_STYLES)[number];

/** How a kit's leaves are made: cut and folded, or by corners alone, without a knife. */
export const FOLD_STYLES = [...KNIFE_STYLES, "corner"] as const;

export type FoldStyle = (typeof FOLD_STYLES)[number];

/** How far from the fore-edge a level's flap reaches, mm: twice its depth, less what a first fold at the front line took. `level` counts from 1, `depths` are the levels'. */
export function flapReach(style: FoldStyle, depths: readonly number[], level: number): number {
  const depth = depths[level - 1]!;
  return style === "stepped" && level > 1 ? 2 * depth - depths[0]! : 2 * depth;
}
