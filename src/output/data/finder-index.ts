import type { KitOutline } from "../../core/finder/outline.ts";

/** Where the outlines of a site's kits stand below it. */
export const FINDER_INDEX = "assets/finder-index.js";

/** A classic script that hands the outlines to the finder, a line for each kit: unlike a fetch, it also loads from a page opened from the disk. */
export function finderIndex(outlines: readonly KitOutline[]): string {
  return `self.leaflightIndex=[\n${outlines.map((outline) => JSON.stringify(outline)).join(",\n")}\n];\n`;
}
