/** What a computed supply costs, for one of its unit. */
export type Priced =
  | "book"
  | "card"
  | "acetate"
  | "tape"
  | "glueDots"
  | "string"
  | "button"
  | "light"
  | "cells"
  | "blades";

/** Tools that every kit, or those with cuts, ask for. */
export type ToolSupply = "boneFolder" | "ruler" | "pencil" | "knife" | "mat" | "packing";

/** A supply that the program counts. */
export type SupplyId = Priced | ToolSupply;

/** What a quantity counts: things by themselves (`each`), sets of cells, sheets, or a length as it is bought. */
export type SupplyUnit = "each" | "set" | "sheet" | "m" | "ft";
