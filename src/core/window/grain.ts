import { type Part, sizeOfPart } from "./part.ts";

/**
 * Which way the grain of a part's card runs: head to tail where the part lies on the book, so that frame and hinge bend along
 * it; along the length of what has a frame of its own (common practice, no source). Undefined where it does not matter.
 */
export function grainOf(part: Part): "upright" | "level" | undefined {
  if (part.material !== "card" || part.motif !== undefined) return undefined;
  const { width, height } = sizeOfPart(part);
  return part.frame !== "own" || height >= width ? "upright" : "level";
}
