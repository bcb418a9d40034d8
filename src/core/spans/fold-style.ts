/** How cut leaves are folded: each span once from flat at its own line, or the whole leaf at the front line first and deeper spans again. */
export const KNIFE_STYLES = ["single", "stepped"] as const;

export type KnifeStyle = (typeof KNIFE_STYLES)[number];

/** How a kit's leaves are made: cut and folded, or by corners alone, without a knife. */
export const FOLD_STYLES = [...KNIFE_STYLES, "corner"] as const;

export type FoldStyle = (typeof FOLD_STYLES)[number];
