import type { Kit } from "../../core/kit/kit.ts";
import type { Caution } from "../../core/plan/caution.ts";
import { LoadError, loadScript } from "./load-script.ts";

/** What a page needs to match its kit to another book: the kit with its picture, and the cautions. */
export interface KitData {
  readonly kit: Kit;
  readonly cautions: readonly Caution[];
}

declare global {
  interface Window {
    leaflightKit?: KitData;
    /** Every kit that was loaded, by its slug. */
    leaflightKits?: Record<string, KitData>;
  }
}

/** Fetches the kit's data once, as a script beside the page, so that it also works from the disk. @throws LoadError */
export async function loadKitData(address: string): Promise<KitData> {
  if (!window.leaflightKit) await loadScript(address, "kit-data");
  if (!window.leaflightKit) throw new LoadError("kit-data");
  return window.leaflightKit;
}

/** Fetches the data of one of many kits; `site` is the site's folder as seen from the page, with its slash. @throws LoadError */
export async function loadKitOf(slug: string, site: string): Promise<KitData> {
  if (!window.leaflightKits?.[slug]) await loadScript(`${site}kits/${slug}/kit-data.js`, "kit-data");
  const data = window.leaflightKits?.[slug];
  if (!data) throw new LoadError("kit-data");
  return data;
}
