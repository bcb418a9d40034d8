import type { seatTime } from "../../core/class/schedule.ts";
import type { KitOutline } from "../../core/finder/outline.ts";
import type { farnessOf, prospectOf } from "../../core/finder/prospect.ts";
import type { judge } from "../../core/finder/verdict.ts";
import { FINDER_INDEX } from "../../output/data/finder-index.ts";
import { LoadError, loadScript } from "../shared/load-script.ts";

/** What works kits out for a book. */
export interface Judge {
  readonly farnessOf: typeof farnessOf;
  readonly prospectOf: typeof prospectOf;
  readonly judge: typeof judge;
  /** How long a seat of a class takes. */
  readonly seatTime: typeof seatTime;
}

declare global {
  interface Window {
    leaflightJudge?: Judge;
    leaflightIndex?: readonly KitOutline[];
  }
}

/** Fetches once what works kits out; `site` is the site's folder as seen from the page, with its slash. @throws LoadError */
export async function loadJudge(site: string): Promise<Judge> {
  if (!window.leaflightJudge) await loadScript(`${site}assets/scripts/judge.js`, "judge");
  if (!window.leaflightJudge) throw new LoadError("judge");
  return window.leaflightJudge;
}

/** Fetches the kits' outlines once, by their slugs. Without them each kit is asked. */
export async function loadIndex(site: string): Promise<ReadonlyMap<string, KitOutline>> {
  try {
    if (!window.leaflightIndex) await loadScript(`${site}${FINDER_INDEX}`, "judge");
  } catch (error) {
    if (!(error instanceof LoadError)) throw error;
  }
  return new Map((window.leaflightIndex ?? []).map((outline) => [outline.slug, outline]));
}
