import type { Kit } from "../../core/kit/kit.ts";
import type { FitMade } from "./fit-maker.ts";
import { putMarkup } from "./put-markup.ts";

/** How much of the page follows at once: at a key press only what is in sight. */
export type Reach = "in sight" | "all";

/** Parts that light and window change: they wait for the whole computation. */
const SLOW_PARTS = ["window", "supplies", "takes", "steps", "cautions", "care"].flatMap((name) => [
  name,
  `${name}-gist`,
]);

/** Whether a light or a window is computed a moment after the rest, so that only then it is known how the kit comes out. */
export function isSlow(kit: Kit): boolean {
  return kit.insert !== undefined || kit.light !== undefined;
}

/** Names of the parts of the page to fill again: at the key those in sight, but none that light or window change; never the steps. */
export function partsToFill(kit: Kit, reach: Reach): string[] {
  const parts = [...document.querySelectorAll<HTMLElement>("[data-part]")];
  const waits = reach === "in sight" && isSlow(kit) ? SLOW_PARTS : ["steps"];
  return parts
    .filter((part) => reach === "all" || isInSight(part))
    .map((part) => part.dataset["part"]!)
    .filter((name) => !waits.includes(name));
}

/** Fills parts with their new markup: those in sight at once, the others each in a task of its own for as long as they are `wanted`. */
export async function fillParts(
  made: Extract<FitMade, { readonly parts: unknown }>["parts"],
  wanted: () => boolean,
): Promise<void> {
  const parts = made.flatMap(([name, markup]) => {
    const part = partOf(name);
    return part ? [{ part, markup, inSight: isInSight(part) }] : [];
  });
  for (const { part, markup, inSight } of parts) if (inSight) putMarkup(part, markup);
  for (const { part, markup, inSight } of parts) {
    if (inSight) continue;
    await new Promise((resolve) => setTimeout(resolve));
    if (!wanted()) return;
    putMarkup(part, markup);
  }
}

export function partOf(name: string): HTMLElement | null {
  return document.querySelector<HTMLElement>(`[data-part="${name}"]`);
}

/** What is in a closed chapter has a place on the page, too. */
function isInSight(element: Element): boolean {
  if (!element.checkVisibility()) return false;
  const box = element.getBoundingClientRect();
  return box.bottom > 0 && box.top < innerHeight;
}
