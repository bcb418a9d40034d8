import type { Kit } from "../../core/kit/kit.ts";
import type { KitView } from "../../output/views/kit-view.ts";
import { fetchStepDrawings } from "../shared/step-drawings.ts";
import { renderPart } from "./render.ts";

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

/** Parts of the page to fill again: at the key those in sight, but none that light or window change; never the steps. */
export function partsToFill(kit: Kit, reach: Reach): HTMLElement[] {
  const parts = [...document.querySelectorAll<HTMLElement>("[data-part]")];
  if (reach === "all") return parts.filter((part) => part.dataset["part"] !== "steps");
  const waits = isSlow(kit) ? SLOW_PARTS : ["steps"];
  return parts.filter((part) => isInSight(part) && !waits.includes(part.dataset["part"]!));
}

/** Fills the steps, whose drawings are a script of their own. */
export async function fillSteps(view: KitView, wanted: () => boolean): Promise<void> {
  await fetchStepDrawings("../../");
  const place = document.querySelector<HTMLElement>('[data-part="steps"]');
  if (place && wanted()) place.innerHTML = renderPart("steps", view);
}

/** The parts with their new markup, which is not in the page yet. */
export function fillParts(
  parts: readonly HTMLElement[],
  view: KitView,
): { readonly part: HTMLElement; readonly text: string }[] {
  return parts.map((part) => ({ part, text: renderPart(part.dataset["part"]!, view) }));
}

/** What is in a closed chapter has a place on the page, too. */
function isInSight(element: Element): boolean {
  if (!element.checkVisibility()) return false;
  const box = element.getBoundingClientRect();
  return box.bottom > 0 && box.top < innerHeight;
}
