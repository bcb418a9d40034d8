import { KIT_PARTS, type KitPart } from "../../output/parts/kit-parts.ts";
import type { KitView } from "../../output/views/kit-view.ts";

/** Fills one of the page's parts with a kit's view, as the build does. */
export function renderPart(name: string, view: KitView): string {
  return String(KIT_PARTS[name as KitPart](view));
}
