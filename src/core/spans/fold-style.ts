/** How spans are folded: each once from flat at its own line, or the whole leaf at the front line first and deeper spans again. */
export type FoldStyle = "single" | "stepped";
