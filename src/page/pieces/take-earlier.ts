import { LoadError, loadScript } from "../shared/load-script.ts";
import { earlierKeys } from "./earlier.ts";
import type { LeftBehind } from "./take-over.ts";

declare global {
  interface Window {
    leaflightTakeOver?: (titles: Readonly<Record<string, string>>) => Promise<readonly LeftBehind[]>;
  }
}

/**
 * What earlier versions kept is taken over by a script of its own, which is fetched only where there is something; `site` is the
 * site's folder, `titles` are those of kits by their slugs. Gives what cannot be read.
 */
export async function takeEarlier(
  site: string,
  titles: Readonly<Record<string, string>>,
): Promise<readonly LeftBehind[]> {
  if (earlierKeys().length === 0) return [];
  try {
    await loadScript(`${site}assets/scripts/take-over.js`, "pieces");
    return (await window.leaflightTakeOver?.(titles)) ?? [];
  } catch (error) {
    // It stays where it is, for the next visit.
    if (!(error instanceof LoadError)) throw error;
    return [];
  }
}
