/** What a computed supply costs, for one of its unit. */
export const PRICED = [
  "book",
  "card",
  "acetate",
  "tape",
  "glueDots",
  "glue",
  "bakingPaper",
  "string",
  "button",
  "light",
  "cells",
  "blades",
  "spacers",
] as const;

export type Priced = (typeof PRICED)[number];

/** Tools that a kit’s steps may ask for, in the order of the list. */
export const TOOL_SUPPLIES = [
  "boneFolder",
  "ruler",
  "pencil",
  "awl",
  "scissors",
  "slips",
  "knife",
  "mat",
  "weight",
  "packing",
] as const;

export type ToolSupply = (typeof TOOL_SUPPLIES)[number];

/** A supply that the program counts. */
export type SupplyId = Priced | ToolSupply;

/** What a quantity counts: things by themselves (`each`), sets of cells, sheets, or a length as it is bought. */
export type SupplyUnit = "each" | "set" | "sheet" | "m" | "ft";
