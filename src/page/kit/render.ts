import { KIT_PARTS, type KitPart } from "../../output/parts/kit-parts.ts";
import type { AnyKitView } from "../../output/views/any-kit-view.ts";

/** Fills one of the page's parts with a kit's view, as the build does. */
export function renderPart(name: string, view: AnyKitView): string {
  if (view.way === "corner") return self.leaflightCorner!.part(name, view);
  return String(KIT_PARTS[name as KitPart](view));
}
