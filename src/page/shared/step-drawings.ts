import type { DrawStep } from "../../output/views/step-drawing.ts";
import { LoadError, loadScript } from "./load-script.ts";

declare global {
  interface Window {
    leaflightStepFigure?: (id: Parameters<DrawStep>[0], book: Drawn) => string;
  }
}

interface Drawn {
  readonly kit: Parameters<DrawStep>[1];
  readonly pattern: Parameters<DrawStep>[2];
}

/** Fetches what draws the steps, once; `site` leads to the site's folder. Without it the words stand alone. */
export async function fetchStepDrawings(site: string, load = loadScript): Promise<void> {
  try {
    if (!self.leaflightStepFigure) await load(`${site}assets/scripts/step-figures.js`, "figures");
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
  }
}

/** Draws a step with what was fetched. */
export const fetchedStep: DrawStep = (id, kit, pattern) => {
  const svg = self.leaflightStepFigure?.(id, { kit, pattern }) ?? "";
  return svg === "" ? undefined : { svg, label: "" };
};
