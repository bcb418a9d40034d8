/** What a computed supply costs, for one of its unit. */
export const PRICED = [
  "book",
  "card",
  "acetate",
  "tape",
  "glueDots",
  "string",
  "button",
  "light",
  "cells",
  "blades",
] as const;

export type Priced = (typeof PRICED)[number];

/** Tools that every kit, or those with cuts, ask for. */
export const TOOL_SUPPLIES = ["boneFolder", "ruler", "pencil", "knife", "mat", "packing"] as const;

export type ToolSupply = (typeof TOOL_SUPPLIES)[number];

/** A supply that the program counts. */
export type SupplyId = Priced | ToolSupply;

/** What a quantity counts: things by themselves (`each`), sets of cells, sheets, or a length as it is bought. */
export type SupplyUnit = "each" | "set" | "sheet" | "m" | "ft";
