import type { Kit } from "../../core/kit/kit.ts";
import { after } from "../shared/after.ts";
import type { FitMade } from "./fit-maker.ts";
import { putMarkup } from "./put-markup.ts";

/** How much of the page a fit is made for: at a key press first only what is in sight. */
export type Reach = "in sight" | "all";

/** Names of the parts of the page to fill again, the first to be filled first. */
export interface PartsToFill {
  /** In sight, but none that light or window change. */
  readonly quick: readonly string[];
  /** All that are shown, those in sight first; never the steps, whose drawings are a script of their own. */
  readonly shown: readonly string[];
  readonly stepsShown: boolean;
  /** Nobody sees them: in closed chapters, and so far off that the browser does not lay them out. */
  readonly unseen: readonly string[];
}

/** Parts that light and window change: they wait for the whole computation. */
const SLOW_PARTS = ["window", "supplies", "takes", "steps", "cautions", "care"].flatMap((name) => [
  name,
  `${name}-gist`,
]);

/** Whether a light or a window is computed a moment after the rest, so that only then it is known how the kit comes out. */
export function isSlow(kit: Kit): boolean {
  return kit.insert !== undefined || kit.light !== undefined;
}

export function partsToFill(kit: Kit): PartsToFill {
  const parts = [...document.querySelectorAll<HTMLElement>("[data-part]")].map((part) => {
    const unseen = isUnseen(part);
    return { name: part.dataset["part"]!, unseen, inSight: !unseen && isInSight(part) };
  });
  const named = (wanted: (part: (typeof parts)[number]) => boolean): string[] =>
    parts.filter(wanted).map(({ name }) => name);
  const waits = isSlow(kit) ? SLOW_PARTS : ["steps"];
  const shown = [...named(({ inSight }) => inSight), ...named(({ unseen, inSight }) => !unseen && !inSight)];
  return {
    quick: named(({ name, inSight }) => inSight && !waits.includes(name)),
    shown: shown.filter((name) => name !== "steps"),
    stepsShown: shown.includes("steps"),
    unseen: named(({ unseen }) => unseen),
  };
}

/** Parts are filled one after the other for so long before the page does something else, ms. */
const SLICE = 8;

/** Fills parts with their new markup for as long as they are `wanted`. */
export async function fillParts(
  made: Extract<FitMade, { readonly parts: unknown }>["parts"],
  wanted: () => boolean,
): Promise<void> {
  let start = performance.now();
  for (const [name, markup] of made) {
    if (performance.now() - start > SLICE) {
      await after();
      start = performance.now();
    }
    if (!wanted()) return;
    const part = partOf(name);
    if (part) await putMarkup(part, markup, wanted);
  }
}

export function partOf(name: string): HTMLElement | null {
  return document.querySelector<HTMLElement>(`[data-part="${name}"]`);
}

/** Whether a part is not laid out. To ask where it is on the page would have it laid out; a browser that cannot be asked lays out all but what is closed. */
function isUnseen(part: Element): boolean {
  const isClosed = part.closest("details:not([open]) > :not(summary)") !== null;
  return isClosed || part.checkVisibility?.({ contentVisibilityAuto: true }) === false;
}

export function isInSight(element: Element): boolean {
  const box = element.getBoundingClientRect();
  return box.bottom > 0 && box.top < innerHeight;
}
