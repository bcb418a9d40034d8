import type { Part } from "../../core/window/part.ts";

/** Tints by material; parts are told apart by their names. */
export const MATERIAL: Readonly<Record<Part["material"], string>> = {
  card: "#f1e8d5",
  acetate: "#e3eff0",
  paper: "#ffffff",
};
